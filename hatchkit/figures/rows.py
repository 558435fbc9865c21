"""Rows that carry their own names: the name above, the bar or mark below it over the whole width.

Heights are in points, from 0 at the top downwards.
"""

from hatchkit.figures import style

#: Height of a line of text, of a bar with the room around it, and of the bar itself.
LINE, ROOM, THICK = 13.5, 16.0, 10.5
#: Letters in a line of a name over the whole width.
LETTERS = 56


def stack(ax, names, *, below=6, above=0, heads=(), empty=(), width=LETTERS):
    """Axes with the names of rows written, and the middle of each row's bar.

    Parameters
    ----------
    ax : Axes or None
    names : sequence of str
        Long names take several lines.
    below, above : float
        Room for the scale below and for what stands above, points.
    heads : sequence of (int, str)
        Headings: before which row, and the words.
    empty : collection of int
        Rows that are a name only.
    width : int
        Letters in a line.

    Returns
    -------
    Axes, list of float
        Middles of the bars; their thickness is `THICK`.
    """
    headed, at, middles, texts = dict(heads), -float(above), [], []
    for place, name in enumerate(names):
        if place in headed:
            at -= LINE * (0.6 if place else 0.0)
            texts.append((at - LINE / 2, headed[place], "bold"))
            at -= 1.3 * LINE
        for line in style.wrapped(name, width).split("\n"):
            texts.append((at - LINE / 2, line, "normal"))
            at -= LINE
        middles.append(at - ROOM / 2 + 1)
        at -= 0 if place in empty else ROOM
    ax = style.axes(ax, size=(style.WIDTH, (below - at) / 72))
    ax.set_ylim(at, 0)
    for y, words, weight in texts:
        style.write(ax, 0, y, words, weight=weight, transform=ax.get_yaxis_transform())
    return style.bare(ax), middles


def bar(ax, middle, length, words="", *, left=0.0, **look):
    """A bar with its number after it."""
    ax.barh(middle, length, left=left, height=THICK, **look)
    if words:
        beside(ax, max(left, left + length), middle, words)


def beside(ax, x, y, words, *, side=1, color=style.INK):
    """Words just right (side 1) or left (side -1) of a point."""
    style.beside(ax, words, (x, y), side=side, color=color)


def apart(places, gap):
    """Places of labels in their order, moved as little as makes them `gap` apart.

    Parameters
    ----------
    places : sequence of float
    gap : float

    Returns
    -------
    list of float
        In the order of `places`.
    """
    groups = []  # of [wished place of the lowest, members]
    for at in sorted(range(len(places)), key=lambda at: places[at]):
        groups.append([float(places[at]), [at]])
        while len(groups) > 1 and groups[-2][0] + gap * len(groups[-2][1]) > groups[-1][0]:
            low, high = groups[-2], groups.pop()
            count, more = len(low[1]), len(high[1])
            low[0] = (low[0] * count + (high[0] - gap * count) * more) / (count + more)
            low[1] += high[1]
    out = [0.0] * len(places)
    for start, members in groups:
        for step, at in enumerate(members):
            out[at] = start + gap * step
    return out
