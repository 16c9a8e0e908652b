// Writes colours as two independent libraries number them:
//   npm install colorjs.io culori && node colours.mjs 500 > colours.csv
// Columns: two colours; of the first its Lab under D50 and D65 and OKLab; CIEDE2000 between the two
// under D65; an OKLCH colour and where the gamut mapping of CSS Color 4 puts it in sRGB.
import Color from 'colorjs.io';
import { converter, differenceCiede2000 } from 'culori';

const count = Number(process.argv[2] ?? 500);
let state = 20240611;
const random = () => {
  state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
  return state / 4294967296;
};
const hex = () => '#' + Math.floor(random() * 16777216).toString(16).padStart(6, '0');
const f = (...numbers) => numbers.map((n) => (n ?? 0).toFixed(9)).join(',');
const lab65 = converter('lab65');

console.log('# colorjs.io and culori (npm), made by src/test/node/colours.mjs');
for (let i = 0; i < count; i++) {
  const a = hex();
  const b = hex();
  const c = new Color(a);
  const l = lab65(a);
  const wide = [random(), random() * 0.4, random() * 360];
  const shown = new Color('oklch', wide).toGamut({ space: 'srgb', method: 'css' }).to('srgb').coords;
  console.log([a, b, f(...c.to('lab').coords), f(l.l, l.a, l.b), f(...c.to('oklab').coords),
    f(differenceCiede2000()(a, b)), f(...wide), f(...shown)].join(','));
}
