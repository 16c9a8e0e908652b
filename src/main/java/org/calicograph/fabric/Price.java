package org.calicograph.fabric;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.calicograph.measure.Length;

/**
 * What a length of cloth costs.
 *
 * @param amount   0 or more
 * @param currency three letters as in ISO 4217
 * @param per      the length that the amount buys; above 0
 */
public record Price(BigDecimal amount, String currency, Length per) {

    private static final Length YARD = Length.yards(1);
    private static final Length METRE = Length.cm(100);

    public Price {
        if (amount.signum() < 0) {
            throw new IllegalArgumentException("a price is " + amount + " " + currency + "; use 0 or more");
        }
        if (!currency.matches("[A-Z]{3}")) {
            throw new IllegalArgumentException("'" + currency + "' is not a currency; use three letters, such as EUR");
        }
        if (!per.isPositive()) {
            throw new IllegalArgumentException("a price is for " + per + " of cloth; use a length above 0, such as 1 yd");
        }
    }

    /** A price by the yard: {@code perYard("11.50", "EUR")}. */
    public static Price perYard(String amount, String currency) {
        return new Price(number(amount), currency, YARD);
    }

    /** A price by the metre: {@code perMetre("12.60", "EUR")}. */
    public static Price perMetre(String amount, String currency) {
        return new Price(number(amount), currency, METRE);
    }

    private static BigDecimal number(String amount) {
        try {
            return new BigDecimal(amount.trim());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("'" + amount + "' is not an amount of money; write it like 11.50", e);
        }
    }

    /** What a length costs, to the hundredth, halves up. */
    public BigDecimal of(Length length) {
        return amount.multiply(BigDecimal.valueOf(length.units()))
                .divide(BigDecimal.valueOf(per.units()), 2, RoundingMode.HALF_UP);
    }

    @Override
    public String toString() {
        String unit = per.equals(YARD) ? "yd" : per.equals(METRE) ? "m" : per.toString();
        return String.format(Locale.ROOT, "%s %s per %s", amount.toPlainString(), currency, unit);
    }
}
