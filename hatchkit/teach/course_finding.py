"""The course's reader of a written finding: looks for its parts and for claims of a cause.

It goes by words and cannot judge sense, so it never calls a finding right: it says what it looked for,
and the last word is a reader's.
"""

import re
from dataclasses import dataclass

from hatchkit.reference import small_words
from hatchkit.say import text
from hatchkit.teach.judging import FOUND, NOT_YET

#: Points of percent by which a stated interval may differ from a worked-out one.
TOLERANCE = 1.0

UNITS = list(small_words("units"))
TENS = dict(zip(small_words("tens"), range(20, 100, 10), strict=True))

NUMBER = r"(?<![\d.])(\d+(?:\.\d+)?)"
TO = r" ?(?:%|days?)? ?(?:up to|to|-|and|until|till|through) ?(?:up to |about |day |the )?"
LOSS = r"dead|kill|destroy|\bdied?\b|\bdying|death|\blost\b|\bloss|perish|mortal|stopped|not (?:surviv|make|live)"

#: Other words for what the record of a case may hold.
TOPICS = {"power": r"power|electri|outage|blackout|current\b|cold|chill", "stored": r"stor(?:ed|age|ing)|kept|12 days"}

#: Wordings that leave room for another explanation.
ROOM = (
    r"could|(?<!\d )may(?! \d)|might|perhaps|possibl[ey]|maybe|cannot (?:be )?(?:tell|told|say|said|know|show)"
    r"|not (?:be )?(?:sure|certain|clear|known|proven|told|shown|excluded|ruled out)|rule out|unclear|unknown"
    r"|unproven|no proof|not (?:a )?pro(?:of|ve)|either|whether|unless|(?:other|another|rival|second|different"
    r"|alternative) (?:\w+ )?(?:explanation|cause|reason|possibility)s?|something else|alternativ"
)

#: What takes the edge off a claim if it stands before it in the same clause, and what does so after it.
BEFORE = (
    r"\b(?:could|may|might|perhaps|possibl[ey]|maybe|cannot|not|no|nor|neither|never|nobody|nothing|whether|if"
    r"|unless|unclear|unknown|unproven|suspect\w*|suggests?|seems?|appears?|likely|probably|would|either|think)\b"
)
AFTER = (
    r"\b(?:cannot|could be|may be|might be|(?<!and )(?:perhaps|possibl[ey]|maybe)|unclear|unknown|unproven|open"
    r"|not (?:be )?(?:sure|certain|clear|known|proven|told|shown|said))\b"
)

#: Claims of a cause.
CLAIMS = (
    r"kill(?:ed|s|ing)?",
    r"caus(?:ed|ing)|(?<!other )(?<!possible )(?<!the )(?<!which )causes",
    r"(?:the|main|real|only|true|its|their) cause",
    r"responsible|to blame|blamed?|culprit|guilty|at fault",
    r"pro(?:ves?|ved|ven|of)",
    r"led to|leads to|result(?:ed|s) (?:in|from)",
    r"(?:a|the) (?:\w+ )?(?:result|consequence) of|brought about",
    r"did (?:it|this|that)(?= [^a-z]|[^ \w]|$| to)",
    r"the reason|(?:is|was) why|explains(?!.*\b(?:as well|also|too|equally)\b)",
    r"ma(?:de|kes)(?: \w+){0,4}? (?:die|dead|perish|stop|lose|lost|weak)",
    r"(?:dead|died|die|lost|deaths?)(?:(?: \w+){0,6}? (?:from|through)| (?:\w+ )?(?:of|by|to))"
    r"(?: the| a| being| too| long)* (?:power|cold|chill|outage|stor|cut|heat)\w*",
    r"(?:cost|took|destroyed|ruined|harmed|damaged|claimed)(?: \w+){0,3}? (?:embryos|eggs|them|lives|chicks)",
    r"(?:had|has|made|makes) no (?:effect|difference|influence|part)",
    r"(?:is|was|are|were) not (?:because of |due to |from )?(?:the )?(?:long )?(?:stor|power)\w*",
)
#: Claims too, unless they say why the interval is wide, or why the power went.
WEAK_CLAIMS = r"because(?: of)?|due to|owing to|thanks to|on account of|as a result"
NO_DEATHS = r"\binterval|\bwide\b|\buncertain|\bso few\b"
#: Wordings that allow of no doubt.
SURE = "|".join(
    (
        r"(?:no|without(?: a| any)?|beyond(?: any)?) doubt",
        r"doubtless|undoubtedly|(?<!not )certainly|definitely|obviously|for sure",
        r"nothing else (?:could|can|explains|fits|did|would)",
        r"(?:can )?only (?:be|explanation|cause|reason)",
        r"no other (?:explanation|cause|reason)(?!.*\b(?:ruled out|excluded)\b)",
        r"must have",
    )
)


@dataclass(frozen=True)
class Writing:
    """An exercise whose answer is a finding in one or two sentences.

    The data is one dict: batch; lost, eggs (so many of so many); days (last look alive, look that found
    them dead); facts (what the record holds beside the losses: words of `TOPICS`, or the beginning of
    a word).
    """

    def judge(self, answer, finding) -> tuple[str, str]:
        """Look for the parts of a finding; the first that is missing is the hint."""
        if not isinstance(answer, str):
            return NOT_YET, text("finding_unwritten")
        plain = _plain(answer)
        lacking = next((part for found, part in _parts(plain, finding) if not found), None)
        if lacking is None:
            return FOUND, "found"
        hint = text(f"finding_{lacking}", dict(claim=claimed(re.sub(_batch(finding["batch"]), "the batch", plain))))
        return NOT_YET, f"{hint} {text('finding_last_word')}"


def _parts(written, finding):
    """(found, its name) for each part of a finding, in the order in which a reader needs them."""
    batch, lost, eggs = _batch(finding["batch"]), finding["lost"], finding["eggs"]
    yield re.search(batch, written), "batch"
    written = re.sub(batch, "the batch", written)
    yield re.search(LOSS, written), "lost"
    stated = _without_days_and_shares(written)
    counted = _has_counts(stated, lost, eggs)
    yield counted or not re.search(r"\d[^\d]{0,40}?(?:\b(?:of|from)\b|/)[^\d]{0,25}?\d", stated), "wrong_counts"
    yield counted, "counts"
    good, bad = _intervals(written, lost, eggs)
    yield good or bad, "sure"
    yield good and not bad, "interval"
    yield set(finding["days"]) <= _days(written), "days"
    yield not _on_one_day(written, finding["days"]), "one_day"
    yield not claimed(written), "claim"
    named = [fact for fact in finding["facts"] if re.search(rf"\b(?:{TOPICS.get(fact, fact)})", written)]
    yield named, "beside"
    yield len(named) > 1 or re.search(rf"\b(?:{ROOM})", written), "room"


def claimed(text: str) -> str | None:
    """The first wording of a text in plain letters that claims a cause outright; None if there is none."""
    text = re.sub(r" \([^)]*%[^)]*\)", "", text)
    for clause in re.split(
        r"(?:[.;:!?]+(?!\d))|,? \b(?:but|although|though|however|yet|whereas)\b|, (?:and|so)\b| - ", text
    ):
        sure = re.search(rf"\b(?:{SURE})\b", clause)
        if sure and not re.search(r"\b(?:cannot|not|nobody|never)\b", clause[: sure.start()]):
            return sure[0]
        for claim in re.finditer("|".join(rf"\b(?:{words})" for words in (*CLAIMS, WEAK_CLAIMS)), clause):
            before, after = clause[: claim.start()], clause[claim.end() :]
            reason = re.fullmatch(WEAK_CLAIMS, claim[0]) and (
                re.search(NO_DEATHS, clause) or re.search("power|machine", before) and not re.search(LOSS, clause)
            )
            if not (reason or re.search(BEFORE, before) or re.search(AFTER, after)):
                return claim[0]
    return None


def _plain(answer: str) -> str:
    """Small letters, plain dashes and percent signs, figures for number words, cannot for can't."""
    text = " ".join(answer.lower().split())
    for old, new in (
        (r"[‐-―−]", "-"),
        ("[’`]", "'"),
        (r"\bper ?cents?\b|\bpct\b", "%"),
        (r"(\d),(\d)", r"\1.\2"),
        (r"\bcan't\b|\bcan not\b", "cannot"),
        (r"n't\b", " not"),
        (r"[*_]", ""),
    ):
        text = re.sub(old, new, text)
    tens = "|".join(TENS)
    units = "|".join(UNITS[::-1])
    text = re.sub(
        rf"\b({tens})(?:[ -]({units}))?\b",
        lambda found: str(TENS[found[1]] + (UNITS.index(found[2]) if found[2] else 0)),
        text,
    )
    return re.sub(rf"\b({units})\b", lambda found: str(UNITS.index(found[1])), text)


def _batch(name) -> str:
    """Pattern for the name of a batch: B07, B7, b-07, B 07."""
    parts = re.fullmatch(r"([a-z]*)0*(\d+)", str(name).lower())
    return rf"\b{parts[1]}[ -]?0*{parts[2]}\b" if parts else re.escape(str(name).lower())


def _without_days_and_shares(text: str) -> str:
    """The text without days, percentages, durations and temperatures, so that only counts are left."""
    for words in (
        rf"{NUMBER}{TO}{NUMBER} ?%",
        rf"{NUMBER} ?%",
        r"\bdays \d+(?: ?(?:to|-|and|until) ?(?:day )?\d+)?",
        r"\b(?:day|d)[ -]?\d+(?: ?(?:to|-|until) ?(?:day )?\d+)?",
        r"\d+(?:st|nd|rd|th)\b",
        rf"{NUMBER} ?(?:hours?|h\b|°|degrees|days?|weeks?)",
    ):
        text = re.sub(words, "", text)
    return text


def _has_counts(text, lost, eggs) -> bool:
    """So many of so many lost; not so many of so many that lived."""
    lost, eggs = rf"(?<![\d.]){lost}(?![\d]|\.\d)", rf"(?<![\d.]){eggs}(?![\d]|\.\d)"
    not_lived = r"(?! (?:\w+ ){0,2}(?:surviv|hatched|lived))"
    return any(
        re.search(words, text)
        for words in (
            rf"{lost}[^\d]{{0,60}}?(?:\b(?:of|from|in|among)\b|/|\()[^\d]{{0,25}}?{eggs}{not_lived}",
            rf"\b(?:of|from|among)\b[^\d]{{0,25}}?{eggs}[^\d]{{0,90}}?{lost}",
            rf"{eggs}[^\d]{{0,90}}?{lost}[^\d]{{0,30}}?(?:{LOSS})",
        )
    )


def _intervals(text, lost, eggs) -> tuple[bool, bool]:
    """Whether the right interval is stated (Wilson's or the exact one), and whether another one is."""
    from hatchkit.losses.proportions import interval

    right = [[100 * float(end) for end in interval(lost, eggs, method)] for method in ("wilson", "clopper_pearson")]

    def fits(pair):
        return any(abs(one - two) <= TOLERANCE for one in (right[0][0], right[1][0]) for two in pair[:1]) and any(
            abs(one - two) <= TOLERANCE for one in (right[0][1], right[1][1]) for two in pair[1:]
        )

    pairs = re.findall(rf"(?={NUMBER}{TO}(\d+(?:\.\d+)?) ?(%?))", text)
    pairs += re.findall(rf"[\[(]{NUMBER} ?%? ?[,;] ?(\d+(?:\.\d+)?) ?(%?)[\])]", text)
    spans = []
    for low, high, sign in pairs:
        low, high = sorted((float(low), float(high)))
        share = high <= 1 and not sign
        spans.append(((100 * low, 100 * high) if share else (low, high), bool(sign) or share))
    apart = [float(number) for number in re.findall(rf"{NUMBER} ?%", text)]
    good = any(fits(span) for span, _ in spans) or any(
        fits((one, two)) for place, one in enumerate(apart) for two in apart[place + 1 :]
    )
    return good, any(sign and not fits(span) for span, sign in spans)


def _days(text) -> set:
    """Every number that stands as a day."""
    found = re.findall(
        r"\b(?:days?|d)[. -]?(\d+)(?:(?: ?(?:to|-|and|until|till|through|or|/|,) ?)+"
        r"(?:by |the |before )?(?:days? ?)?(\d+))?",
        text,
    )
    found += re.findall(r"(\d+)(?:st|nd|rd|th)?(?: ?(?:to|-|and) ?(?:the )?(\d+)(?:st|nd|rd|th)?)? day", text)
    return {int(day) for pair in found for day in pair if day}


def _on_one_day(text, days) -> bool:
    """Deaths put on a day between two looks."""
    found = re.findall(
        r"\b(?:died|dead|deaths?|lost)(?: (?:of them|all|most|mostly|probably|came|were|fell))* "
        r"(?:on|at) day (\d+)",
        text,
    )
    return any(days[0] < int(day) < days[1] for day in found)
