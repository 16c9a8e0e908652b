package org.calicograph.wire;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.ByteArrayInputStream;
import java.util.List;

/**
 * What a kernel is told when it starts, on its standard input.
 *
 * @param port    on the loopback address, where the session listens
 * @param token   to be shown on both sockets
 * @param stdlib  folders of stdlib sources, the later ones laid over the earlier
 * @param cache   folder for compiled stdlib classes
 * @param heapMegabytes the heap it was given, for its messages
 * @param warm    true to prepare completion once idle
 */
public record KernelStart(int port, String token, List<String> stdlib, String cache, int heapMegabytes, boolean warm) {

    public KernelStart {
        stdlib = List.copyOf(stdlib);
    }

    public void writeTo(OutputStream stream) throws IOException {
        byte[] content = RecordFormat.bytes(this, KernelStart.class);
        DataOutputStream out = new DataOutputStream(stream);
        out.writeInt(content.length);
        out.write(content);
        out.flush();
    }

    public static KernelStart readFrom(InputStream stream) throws IOException {
        DataInputStream in = new DataInputStream(stream);
        int length = in.readInt();
        if (length < 0 || length > 1 << 20) {
            throw new IOException("these are no orders for a kernel; kernels are started by a session");
        }
        return (KernelStart) RecordFormat.read(new DataInputStream(new ByteArrayInputStream(in.readNBytes(length))), KernelStart.class);
    }
}
