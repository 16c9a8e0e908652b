package org.calicograph.wire;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import org.calicograph.drawing.Exhibit;

/**
 * One end of a socket between a session and its kernel. Messages and exhibits travel in frames: four
 * bytes of length, then the content. Sending is safe from any thread; receiving is for one at a time.
 */
public final class Channel implements AutoCloseable {

    private static final int LARGEST = 1 << 30;

    private final Socket socket;
    private final DataInputStream in;
    private final OutputStream out;

    public Channel(Socket socket) throws IOException {
        this.socket = socket;
        socket.setTcpNoDelay(true);
        this.in = new DataInputStream(new BufferedInputStream(socket.getInputStream(), 1 << 16));
        this.out = socket.getOutputStream();
    }

    /** Reaches a session that listens on this machine. */
    public static Channel to(int port) throws IOException {
        return new Channel(new Socket(InetAddress.getLoopbackAddress(), port));
    }

    public boolean holds(Socket other) {
        return socket == other;
    }

    /** How long to wait for a frame to begin, in milliseconds; 0 waits for ever. */
    public void patience(int millis) throws IOException {
        socket.setSoTimeout(millis);
    }

    public void send(Message message) throws IOException {
        frame(RecordFormat.bytes(message, Message.class));
    }

    /** @throws EOFException when the other end is gone */
    public Message receive() throws IOException {
        return (Message) whole(content(LARGEST), Message.class);
    }

    /** The first words of a kernel; nothing that is larger than these may be is read. */
    public FromKernel.Hello receiveHello() throws IOException {
        if (whole(content(1024), Message.class) instanceof FromKernel.Hello hello) {
            return hello;
        }
        throw new IOException("the first message is not a hello");
    }

    /** Sends what a cell's value looks like. */
    public void send(long ticket, String cell, byte[] exhibit) throws IOException {
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(head);
        data.writeLong(ticket);
        data.writeUTF(cell);
        byte[] both = java.util.Arrays.copyOf(head.toByteArray(), head.size() + exhibit.length);
        System.arraycopy(exhibit, 0, both, head.size(), exhibit.length);
        frame(both);
    }

    /** What {@link #send(long, String, byte[])} sends. */
    public record Delivery(long ticket, String cell, Exhibit exhibit) { }

    public Delivery receiveExhibit() throws IOException {
        byte[] content = content(LARGEST);
        DataInputStream data = new DataInputStream(new ByteArrayInputStream(content));
        long ticket = data.readLong();
        String cell = data.readUTF();
        byte[] rest = data.readAllBytes();
        return new Delivery(ticket, cell, ExhibitFormat.exhibit(rest));
    }

    private void frame(byte[] content) throws IOException {
        byte[] head = {(byte) (content.length >>> 24), (byte) (content.length >>> 16), (byte) (content.length >>> 8), (byte) content.length};
        synchronized (out) {
            if (content.length < 1 << 16) {
                byte[] both = java.util.Arrays.copyOf(head, content.length + 4);
                System.arraycopy(content, 0, both, 4, content.length);
                out.write(both);
            } else {
                out.write(head);
                out.write(content);
            }
            out.flush();
        }
    }

    private byte[] content(int most) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > most) {
            throw new IOException("a frame of " + length + " bytes; at most " + most + " were expected");
        }
        byte[] content = in.readNBytes(length);
        if (content.length < length) {
            throw new EOFException("the other end went away in the middle of a message");
        }
        return content;
    }

    private static Object whole(byte[] content, Class<?> kind) throws IOException {
        DataInputStream data = new DataInputStream(new ByteArrayInputStream(content));
        Object value;
        try {
            value = RecordFormat.read(data, kind);
        } catch (RuntimeException e) {
            throw new IOException("nonsense on the wire: " + e, e);
        }
        if (data.available() > 0) {
            throw new IOException(data.available() + " bytes too many behind a message");
        }
        return value;
    }

    @Override
    public void close() {
        try {
            socket.close();
        } catch (IOException e) {
            // Closed is what was wanted.
        }
    }
}
