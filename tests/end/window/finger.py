"""A finger on the program's glass: touches sent as TUIO 1.1 cursors, which Qt's own plugin takes in.

TUIO 1.1 (tuio.org, specification): a bundle of OSC messages to /tuio/2Dcur says which cursors are
alive, where each is as a share of the screen, and the number of the frame.
"""

import socket
import struct
import time


def padded(text):
    data = text.encode() + b"\0"
    return data + b"\0" * (-len(data) % 4)


def message(*arguments):
    tags, data = ",", b""
    for argument in arguments:
        if isinstance(argument, str):
            tags, data = tags + "s", data + padded(argument)
        elif isinstance(argument, int):
            tags, data = tags + "i", data + struct.pack(">i", argument)
        else:
            tags, data = tags + "f", data + struct.pack(">f", argument)
    return padded("/tuio/2Dcur") + padded(tags) + data


class Finger:
    def __init__(self, width, height):
        self.width, self.height = width, height
        with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as free:
            free.bind(("127.0.0.1", 0))
            self.port = free.getsockname()[1]
        self.out = socket.socket(socket.AF_INET, socket.SOCK_DGRAM)
        self.frame = self.touches = 0
        self.environment = {"QT_QPA_GENERIC_PLUGINS": f"TuioTouch:udp={self.port}"}

    def send(self, *messages):
        self.frame += 1
        bundle = b"#bundle\0" + struct.pack(">q", 1)
        for part in (*messages, message("fseq", self.frame)):
            bundle += struct.pack(">i", len(part)) + part
        self.out.sendto(bundle, ("127.0.0.1", self.port))

    def tap(self, x, y):
        self.touches += 1
        self.send(message("alive", self.touches),
                  message("set", self.touches, x / self.width, y / self.height, 0.0, 0.0, 0.0))
        time.sleep(0.06)
        self.send(message("alive"))

    def pull(self, x, y, to):
        """Up or down from y, and held for a moment, so that the list does not run on."""
        self.touches += 1
        for k in range(13):
            at = y + (to - y) * min(k, 10) / 10
            self.send(message("alive", self.touches),
                      message("set", self.touches, x / self.width, at / self.height, 0.0, 0.0, 0.0))
            time.sleep(0.05)
        self.send(message("alive"))
