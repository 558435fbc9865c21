"""How many eggs to set: the chance of enough chicks by the number of eggs."""

from hatchkit.figures import style


def eggs_to_set(chances, marks, ax=None, *, language="en"):
    """Chance of at least the wanted chicks against eggs set, the numbers for each sureness on the axes.

    Parameters
    ----------
    chances : DataFrame
        From ``advice.egg_chances.egg_chances``: eggs, chance.
    marks : DataFrame
        ``Plan.eggs``: sure, chicks, eggs, chance. Rows without eggs (no set would do) are left out.
    """
    ax = style.axes(ax, size=(style.WIDTH, 3.7))
    marks = marks[marks["eggs"].notna()]
    left, right = float(chances["eggs"].min()), float(chances["eggs"].max())
    for row in marks.itertuples():
        ax.plot([left, row.eggs, row.eggs], [100 * row.chance, 100 * row.chance, 0], color=style.SOFT, lw=0.9, ls=":")
    ax.plot(chances["eggs"], 100 * chances["chance"], color=style.INK, lw=1.8)
    ax.plot(
        marks["eggs"].astype(float), 100 * marks["chance"], "o", ms=7, ls="", color=style.INK, mfc=style.PAPER, zorder=3
    )
    ax.set(xlim=(left, right), ylim=(0, 102), xlabel=style.tell("eggs_axis", language))
    ax.set_xticks([float(eggs) for eggs in marks["eggs"]], [f"{eggs}" for eggs in marks["eggs"]])
    ax.set_yticks([0, *(100 * marks["sure"])], ["0", *(f"{100 * sure:.0f}" for sure in marks["sure"])])
    style.heading(ax, style.tell("eggs_title", language, chicks=int(marks["chicks"].iloc[0]) if len(marks) else 0))
    return ax
