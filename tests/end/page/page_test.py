"""A phone at the built program: the code is read off the screen by ZBar, which knows nothing of ours;
a client of another language joins with it, sees the table, ticks a zone that shows on the tablet, and
sees a tick of the tablet, each within a second. Wrong codes and other people's zones are refused, and
the log in the state folder says so.
"""

import http.client
import json
import subprocess
import sys
import tempfile
import threading
import time
import uuid
from pathlib import Path
from urllib.parse import urlsplit

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "window"))
from window_test import Display, Program, demo_at_the_table, events, up_to_pinning  # noqa: E402


class Phone:
    def __init__(self, link):
        parts = urlsplit(link)
        self.server = http.client.HTTPConnection(parts.hostname, parts.port, timeout=30)
        self.key = None

    def ask(self, method, path, body=None):
        fields = {"Content-Type": "application/json"} if body is not None else {}
        if self.key:
            fields["Authorization"] = "Bearer " + self.key
        self.server.request(method, path, None if body is None else json.dumps(body), fields)
        answer = self.server.getresponse()
        text = answer.read()
        return answer.status, json.loads(text) if text.startswith(b"{") else text

    def join(self, code):
        status, answer = self.ask("POST", "/join", {"code": code})
        self.key = answer.get("key")
        return status


def scanned(program, home):
    picture = home + "/screen.png"
    subprocess.run(["import", "-window", "root", picture], env=program.environment, check=True)
    return subprocess.run(["zbarimg", "--quiet", "--raw", picture], capture_output=True, text=True,
                          check=True).stdout.strip()


def main(executable):
    with tempfile.TemporaryDirectory() as home, Display() as display:
        program = Program(executable, display, home)
        demo_at_the_table(program)
        up_to_pinning(program)
        program.tap("more")
        program.tap("phones")
        assert program.internet() == [], "nothing listens before it is switched on"
        program.tap("address-127.0.0.1")
        program.tap("phonesOn")
        program.wait_for("phonesOff")
        time.sleep(1)
        link = scanned(program, home)
        assert link.startswith("http://127.0.0.1:") and "#" in link, link
        port = urlsplit(link).port
        listening = f"0100007F:{port:04X}"  # 127.0.0.1 in the kernel's order of bytes
        assert program.internet() == [(listening, "00000000:0000", "0A")], program.internet()
        code = link.split("#")[1]

        phone = Phone(link)
        assert phone.ask("GET", "/")[0] == 200
        assert phone.ask("GET", "/table")[0] == 401
        assert phone.join("2222-2222") == 403
        assert phone.join(code) == 200
        status, table = phone.ask("GET", "/table")
        assert status == 200 and table["title"] == "Harbour Lights", table
        zone = next(z for z in table["quilts"][0]["zones"] if z["next"])
        assert all(z["rows"].startswith("Row") for z in table["quilts"][0]["zones"]), table
        before = events(home)
        tick = {"id": str(uuid.uuid4()), "quilt": 0, "zone": zone["zone"], "kind": zone["next"],
                "person": zone["hands"][0]}
        other = next(p["name"] for p in table["people"] if p["name"] not in zone["hands"])
        assert phone.ask("POST", "/tick", tick | {"person": other})[0] == 403
        assert phone.ask("POST", "/tick", tick)[0] == 200
        assert phone.ask("POST", "/tick", tick)[0] == 200, "sent again: the same"
        assert events(home) == before + 1
        _, table = phone.ask("GET", "/table?after=" + table["at"])
        now = next(z for z in table["quilts"][0]["zones"] if z["zone"] == zone["zone"])
        assert now["stage"] == "open", now
        assert not now["ready"], "closing has to wait for everybody"
        undo = {"id": str(uuid.uuid4()), "person": zone["hands"][0]}
        assert phone.ask("POST", "/undo", undo)[0] == 200
        assert phone.ask("POST", "/tick", tick | {"id": str(uuid.uuid4())})[0] == 200
        _, table = phone.ask("GET", "/table?after=x&who=" + zone["hands"][0])

        program.tap("phoneSheetClose")
        free = next(z["zone"] for z in table["quilts"][0]["zones"] if z["stage"] == "waiting")
        x, y = program.wait_for("zone-" + free)
        heard = []
        waiting = threading.Thread(target=lambda: heard.append(
            (phone.ask("GET", "/table?after=" + table["at"]), time.monotonic())))
        waiting.start()
        time.sleep(0.5)
        tapped = time.monotonic()
        subprocess.run(["xdotool", "mousemove", str(x), str(y), "click", "1"], env=program.environment,
                       check=True)
        waiting.join()
        (status, table), at = heard[0]
        stages = {z["zone"]: z["stage"] for z in table["quilts"][0]["zones"]}
        assert stages[free] == "open", stages
        assert at - tapped < 1, at - tapped
        print(f"a tap on the tablet was on the phone {at - tapped:.2f} s later")

        program.tap("more")
        program.tap("phones")
        program.tap("phonesOff")
        try:
            status, _ = phone.ask("GET", "/")
            raise AssertionError(f"switched off, it still answers {status}")
        except (ConnectionError, http.client.HTTPException):
            pass
        assert [s for s in program.internet() if s[2] in ("0A", "01")] == [], program.internet()
        log = Path(home, ".local/state/bastewright/bastewright.log").read_text()
        assert "a wrong code" in log and "another's zone" in log and code not in log, log
        program.kill()
    print("1 passed, 0 failed")


if __name__ == "__main__":
    main(sys.argv[1])
