#!/usr/bin/python3
"""A disk for tests that keeps two states: what programs see, and what a power cut would leave.

A file's bytes are left as they were when it was last forced (fsync); a name is left if its folder was forced after it was made or
renamed. Nothing else is, which is the least that a disk may keep. Usage: forgetful_disk.py FOLDER. One folder, no others in it. Writing
a name into the file ".cut" copies what would be left into the folder of that name, outside.
"""
import errno, os, stat, sys, time

try:
    from fusepy import FUSE, FuseOSError, Operations
except ImportError:
    from fuse import FUSE, FuseOSError, Operations


class Kept:
    """One file: its bytes as seen and as forced."""

    def __init__(self):
        self.seen = bytearray()
        self.forced = b""
        self.links = 1


class ForgetfulDisk(Operations):

    def __init__(self):
        self.names = {}
        self.forced_names = {}

    def _file(self, path):
        try:
            return self.names[path[1:]]
        except KeyError:
            raise FuseOSError(errno.ENOENT) from None

    def getattr(self, path, fh=None):
        now = time.time()
        times = dict(st_atime=now, st_mtime=now, st_ctime=now, st_uid=os.getuid(), st_gid=os.getgid())
        if path == "/":
            return dict(st_mode=stat.S_IFDIR | 0o755, st_nlink=2, **times)
        kept = self._file(path)
        return dict(st_mode=stat.S_IFREG | 0o644, st_nlink=kept.links, st_size=len(kept.seen), **times)

    def readdir(self, path, fh):
        return [".", "..", *self.names]

    def create(self, path, mode, fi=None):
        self.names[path[1:]] = Kept()
        return 0

    def open(self, path, flags):
        self._file(path)
        return 0

    def read(self, path, size, offset, fh):
        return bytes(self._file(path).seen[offset:offset + size])

    def write(self, path, data, offset, fh):
        if path == "/.cut":
            self._cut(data.decode().strip())
            return len(data)
        kept = self._file(path)
        if offset > len(kept.seen):
            kept.seen.extend(bytes(offset - len(kept.seen)))
        kept.seen[offset:offset + len(data)] = data
        return len(data)

    def truncate(self, path, length, fh=None):
        kept = self._file(path)
        del kept.seen[length:]
        kept.seen.extend(bytes(length - len(kept.seen)))

    def link(self, target, source):
        kept = self._file(source)
        if target[1:] in self.names:
            raise FuseOSError(errno.EEXIST)
        kept.links += 1
        self.names[target[1:]] = kept

    def unlink(self, path):
        self._file(path).links -= 1
        del self.names[path[1:]]

    def rename(self, old, new):
        self.names[new[1:]] = self.names.pop(old[1:])

    def fsync(self, path, datasync, fh):
        kept = self._file(path)
        kept.forced = bytes(kept.seen)
        return 0

    def fsyncdir(self, path, datasync, fh):
        self.forced_names = dict(self.names)
        return 0

    def chmod(self, path, mode):
        return 0

    def utimens(self, path, times=None):
        return 0

    def statfs(self, path):
        return dict(f_bsize=4096, f_blocks=1 << 20, f_bavail=1 << 20, f_bfree=1 << 20)

    def _cut(self, folder):
        os.makedirs(folder)
        for name, kept in self.forced_names.items():
            if name != ".cut":
                with open(os.path.join(folder, name), "wb") as out:
                    out.write(kept.forced)


if __name__ == "__main__":
    FUSE(ForgetfulDisk(), sys.argv[1], foreground=True, nothreads=True, direct_io=True)
