package org.slugpeak.bridge.testkit;

import com.sun.jna.LastErrorException;
import com.sun.jna.Library;
import com.sun.jna.Native;
import com.sun.jna.NativeLong;
import com.sun.jna.Pointer;

/** The few functions of the C library that make a pseudo-terminal pair (POSIX.1-2017, XSH); the numbers are those of Linux. */
interface LibC extends Library {

    LibC INSTANCE = Native.load("c", LibC.class);

    int O_RDWR = 2;
    int O_NOCTTY = 0x100;
    int O_NONBLOCK = 0x800;
    short POLLIN = 1;
    short POLLOUT = 4;
    short POLLHUP = 0x10;
    int EAGAIN = 11;
    int TCSANOW = 0;

    int posix_openpt(int flags) throws LastErrorException;

    int grantpt(int fd) throws LastErrorException;

    int unlockpt(int fd) throws LastErrorException;

    int ptsname_r(int fd, byte[] name, NativeLong length) throws LastErrorException;

    int open(String path, int flags) throws LastErrorException;

    int close(int fd) throws LastErrorException;

    NativeLong read(int fd, byte[] buffer, NativeLong count) throws LastErrorException;

    NativeLong write(int fd, Pointer bytes, NativeLong count) throws LastErrorException;

    int poll(Pointer descriptors, NativeLong count, int timeoutMillis) throws LastErrorException;

    int tcgetattr(int fd, Pointer settings) throws LastErrorException;

    int tcsetattr(int fd, int when, Pointer settings) throws LastErrorException;

    void cfmakeraw(Pointer settings) throws LastErrorException;
}
