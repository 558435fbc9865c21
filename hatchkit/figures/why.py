"""Why was this hatch poor? The evidence item by item, and what was different this time."""

from hatchkit import say
from hatchkit.figures import rows, style
from hatchkit.say.speak import word

#: Furthest that a bar of evidence is drawn: a push of so many tenfolds; a longer one ends in an arrow.
LONGEST = 3.0
#: Furthest from the usual that a difference is drawn, in spreads of ordinary batches.
FURTHEST = 6.0


def ladder(table, ax=None, *, most=9, language="en"):
    """Each piece of evidence on one cause: how hard it pushes for the cause (right) or against it (left).

    Parameters
    ----------
    table : DataFrame
        From ``advice.evidence_ladder.ladder``: kind, part, value, usual, unit,
        digits, said, push (tenfolds; missing where
        the thing is not known), strength.
    most : int
        Rows to draw; the table has the strongest first.
    """
    shown = table.head(most).to_dict("records")
    ax, middles = rows.stack(ax, [_item(row, language) for row in shown], above=1.5 * rows.LINE)
    for words, side in (("ladder_against", -1), ("ladder_for", 1)):
        style.beside(ax, style.tell(words, language), (0, -0.6 * rows.LINE), side=side, apart=8, weight="bold")
    for middle, row in zip(middles, shown, strict=True):
        ax.plot([0, 0], [middle - rows.THICK / 2, middle + rows.THICK / 2], color=style.INK, lw=1.2)
        words = style.tell("strength", language, strength=row["strength"])
        if row["push"] == row["push"]:
            _push(ax, middle, row["push"], words)
        else:
            rows.beside(ax, 0.0, middle, words, color=style.SOFT)
    ax.set_xlim(-LONGEST - 2.2, LONGEST + 2.2)
    return style.bare(ax, bottom=False)


def _item(row, language):
    """The item with what was found and what is usual; the pattern of losses and remarks by their own words."""
    if row["kind"] in ("pattern", "before"):
        return style.tell(f"ladder_{row['kind']}", language)
    if row["value"] != row["value"]:
        name = word(row["kind"], row["part"], language)
        return style.tell("ladder_said", language, name=name, said=row["said"] or None)
    value, usual = (_figure(row, which, language) for which in ("value", "usual"))
    return style.tell("ladder_item", language, name=word("item", row["part"], language), value=value, usual=usual)


def _figure(row, which, language):
    """What was found or is usual, with its unit, as numbers are written in the language; words as they are."""
    if isinstance(row[which], str):
        return row[which]
    number = round(float(row[which]), int(row["digits"])) + 0.0  # no "-0"
    return f"{say.text('shown_number', dict(number=number), language)} {row['unit']}".strip()


def _push(ax, place, push, words):
    """A bar from the middle with its strength in words at its end; one that goes on beyond has an arrow."""
    side = 1 if push >= 0 else -1
    ends = side * min(abs(push), LONGEST)
    look = dict(facecolor="#999999", hatch="") if push > 0 else dict(facecolor=style.PAPER, hatch="//")
    if abs(push) > 0.02:
        ax.barh(place, ends, height=rows.THICK, edgecolor=style.INK, linewidth=0.7, **look)
    if abs(push) > LONGEST:
        ax.plot(
            ends + side * 0.12,
            place,
            ">" if side > 0 else "<",
            ms=8,
            mfc="#999999" if side > 0 else style.PAPER,
            mec=style.INK,
        )
        ends += side * 0.3
    rows.beside(ax, ends, place, words, side=side)


def differences(table, ax=None, *, most=8, language="en"):
    """What was different this time: each thing beside what is usual, on one scale of how unusual it is.

    The grey stretch is where ordinary batches lie (two in three within its inner part); things told by name have no
    place on a scale and stand as words.

    Parameters
    ----------
    table : DataFrame
        ``Causes.different``: item, value, usual, unit, digits, away.
    """
    shown = table.head(most).to_dict("records")
    if not shown:
        return style.nothing(style.axes(ax, size=(style.WIDTH, 0.8)), style.tell("nothing_different", language))
    ax, middles = rows.stack(ax, [_difference_name(row, language) for row in shown], below=30)
    for middle, row in zip(middles, shown, strict=True):
        if not isinstance(row["value"], str):
            _difference(ax, middle, float(row["away"]))
    ax.set_xlim(-FURTHEST - 0.6, FURTHEST + 0.6)
    ax.set_xticks(
        [-FURTHEST, 0, FURTHEST], [style.tell(f"away_{name}", language) for name in ("less", "usual", "more")]
    )
    return ax


def _difference_name(row, language):
    code = "difference_words" if isinstance(row["value"], str) else "ladder_item"
    value, usual = (_figure(row, which, language) for which in ("value", "usual"))
    name = word("item", row["item"], language)
    return style.tell(code, language, name=name, value=value, usual=usual)


def _difference(ax, place, away):
    """Where this batch lies, from the middle of ordinary batches; an arrow where it lies beyond the picture."""
    ax.barh(place, 4, left=-2, height=5, facecolor="#DDDDDD", lw=0)
    ax.barh(place, 2, left=-1, height=10, facecolor="#DDDDDD", lw=0)
    shown = min(max(away, -FURTHEST), FURTHEST)
    ax.plot([0, shown], [place, place], color=style.INK, lw=1.2)
    ax.plot(shown, place, "D" if shown == away else ">" if away > 0 else "<", ms=8, mfc=style.INK, mec=style.INK)
