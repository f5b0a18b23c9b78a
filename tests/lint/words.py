"""Words that people do not read: each with what is said instead. One thing has one name."""

import re

# Pattern, what is said instead, and sentences in which the word means something else.
ENGLISH = (
    (r"\bjobs?\b", "quilt; basting plan for the file",
     # the queue of a printer has jobs; a session's file has a member of that name
     ("job %3", "job %2", "takes no jobs", '"jobs"')),
    (r"\bsections?\b|\brounds\b|\bstations?\b|\bintervals?\b|\btiles?\b", "pass, zone, place", ()),
    (r"\b[Pp]atterns?\b", "pin rows", ()),
    (r"\b[Pp]oints?\b", "pins, dots", ("point away from hands",)),
    (r"\b[Cc]loth\b", "fabric", ()),
    (r"\b[Ww]ebs?\b|\btacks\b", "fuse dots", ("labels? of (the )?web", "[Ff]usible web", "bar tacks")),
    (r"\b[Pp]ast the top\b|\b[Bb]eyond the top\b|\bto spare on\b|\b[Bb](acking|atting) beyond\b", "overage", ()),
    (r"\b[Pp]ut in\b|\b[Pp]lace open\b", "pinned open", ()),
    (r"\b[Rr]e-?cl[ai]", "move the clamps", ()),
    (r"\b[Cc]heck below\b|\b[Uu]nderside\b", "check underneath", ()),
    (r"\b[Pp]hases?\b|\b[Ss]tages?\b|\b[Ww]aves?\b", "the call", ()),
    (r"\b[Pp]ositions?\b|\b[Cc]oordinates?\b", "mark, place", ()),
    (r"\b[Hh]and(ed)? over\b", "roll up for quilting; give to", ()),
    (r"^Go on$|^Rest$", "Resume, break", ()),
    (r"\b[Ll]anes?\b", "Everybody's turns", ()),
    (r"\b[Bb]oxes\b|\b[Ss]tash\b|\b[Oo]n hand\b", "supplies, what we have", ()),
    (r"\bas serves\b|\b[Ww]hichever\b", "faster, automatic", ()),
    (r"\b([Ff]ar|[Nn]ear) (long )?side\b", "what everybody sees, or the drawing", ()),
    (r"\b[Cc]ures?\b|\b[Ff]lanks?\b|\bproven least\b", "fix; half on each side; nobody could do with fewer", ()),
    (r"\b[Pp]ins out\b", "in the quilt", ()),
    (r"\bTo watch\b|\bTake this way\b|\bLeave it as it was\b", "Check first, Use this plan, Cancel", ()),
    (r"\b[Cc]entre|\b[Cc]olour|\b[Gg]rey\b|\b[Mm]etres?\b|\b[Nn]eighbour", "American spelling", ()),
    (r"(?<![\w/])\d+ \d/\d|(?<!%)\b[1357]/[248]\b", "fraction signs: 12½", (r"enter one such as 12 1/2",)),
)
GERMAN = (
    (r"Oberteil", "Top", ()),
    (r"\b(Stoff)?[Zz]ugaben?\b", "Überstand", ()),
    (r"[Vv]orschlag(en)?\b", "nach vorn klappen", ()),
    (r"\bgesteppt", "gestrichelt; gequiltet", ()),
    (r"\bWege?\b", "Variante", ("[Ii]m Weg", "kurzen Weg", "aus dem Weg")),
    (r"\bAbschnitte?\b", "Reststück, Strecke", ("Alle am eigenen Abschnitt",)),
    (r"\bUnterseite\b", "unten, unter dem Quilt", ()),
    (r"\b[Pp]rojekte?\b", "Quilt", ()),
)


def said_otherwise(language, said):
    """What of the words above is in a sentence: the word and what is said instead."""
    for pattern, instead, meant in ENGLISH if language == "en" else GERMAN:
        text = said
        for other in meant:
            text = re.sub(other, "", text)
        found = re.search(pattern, text)
        if found:
            yield found.group(0), instead


def of_program(source):
    """Sentences of the program in a terminal, which no catalogue has: the literals with a space."""
    for name in ("plan_summary.cpp", "plan_text.cpp"):
        for text in re.findall(r'"((?:[^"\\\n]|\\.)* (?:[^"\\\n]|\\.)*)"',
                               (source / "src/app" / name).read_text()):
            yield f"src/app/{name}", text
