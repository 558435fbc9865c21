"""What the pictures of this room tell, as facts for ``say.text("picture_...", facts)``."""

from hatchkit.losses.proportions import told_share


def death_age(result, group=None, *, species=None) -> dict:
    """Facts of `figures.losses.death_age`: species, eggs, deaths, lost, low, high, and the stretch with most deaths.

    Parameters
    ----------
    result : AgeAtDeath
    group, species : str, optional
        As in the picture.

    Raises
    ------
    ValueError
        If there is no such group.
    """
    fits = result.fits
    fits = fits[fits["group"] == group] if group is not None else fits
    fits = fits[fits["species"] == species] if species is not None else fits
    if fits.empty:
        raise ValueError(f"no ages at death of {group or 'any group'}, {species or 'any species'}")
    fit = fits.iloc[0]
    curve = result.curve[(result.curve["group"] == fit["group"]) & (result.curve["species"] == fit["species"])]
    rise = curve["at_most"].shift(-1) - curve["at_least"]
    most, end = int(rise.to_numpy()[:-1].argmax()), curve.iloc[-1]
    return dict(
        species=str(fit["species"]),
        eggs=float(fit["eggs"]),
        deaths=float(fit["deaths"]),
        lost=float(end["at_least"]),
        low=float(end["band_low"]),
        high=float(end["band_high"]),
        most_from=float(curve["day"].iloc[most]),
        most_to=float(curve["day"].iloc[most + 1]),
        most_share=float(rise.iloc[most]),
    )


def egg_ledger(table) -> dict:
    """Facts of `figures.losses.egg_ledger`: eggs_set, chicks, the two largest losses."""
    rows = table.set_index("stage")["eggs"]
    lost = rows.drop("hatched").sort_values(ascending=False, kind="stable")
    lost = lost[lost > 0]
    stages, eggs = [*lost.index[:2], None, None], [*map(float, lost[:2]), 0.0, 0.0]
    return dict(
        eggs_set=float(table["set"].iloc[0]),
        chicks=float(rows["hatched"]),
        stage=stages[0],
        eggs=eggs[0],
        second=stages[1],
        second_eggs=eggs[1],
    )


def losses_by_group(table) -> dict:
    """Facts of `figures.losses.losses_by_group`: best and worst group, the worst one's largest loss, shares as told."""
    name = table.columns[0]
    table = table[table["share_of_set"].notna()]
    chicks = table[table["stage"] == "hatched"].sort_values("share_of_set", kind="stable")
    if chicks.empty:
        return dict(count=0, best="", best_share=0.0, worst="", worst_share=0.0, stage="hatched", stage_share=0.0)
    best, worst = chicks.iloc[-1], chicks.iloc[0]
    lost = table[(table[name] == worst[name]) & (table["stage"] != "hatched")].sort_values("share_of_set").iloc[-1]
    return dict(
        count=len(chicks),
        best=str(best[name]),
        best_share=told_share(best["eggs"], best["set"], best["excess"]),
        worst=str(worst[name]),
        worst_share=told_share(worst["eggs"], worst["set"], worst["excess"]),
        stage=lost["stage"],
        stage_share=told_share(lost["eggs"], lost["set"], lost["excess"]),
    )


def season_chart(table) -> dict:
    """Facts of `figures.losses.season_chart`: batches, how many and which lie outside, the mean."""
    out = list(table.loc[table["outside"].astype(bool), "batch"].astype(str))
    return dict(
        batches=len(table), outside=len(out), names=out, mean=float(table["centre"].iloc[0]), stage=table.attrs["stage"]
    )


#: A pattern of the tray is told from this chance on.
CHANCE = 0.05


def tray_map(batch, table, clustered) -> dict:
    """Facts of `figures.losses.tray_map`.

    Parameters
    ----------
    table : DataFrame
        ``tray.tray_map`` of the batch.
    clustered : DataFrame
        ``tray.clustering`` of the batch.
    """
    from hatchkit.losses.tray import at_edge

    edge = sum(int((at_edge(part["row"], part["col"]) & part["died"]).sum()) for _, part in table.groupby("tray"))
    return dict(
        batch=batch,
        eggs=len(table),
        hatched=int((table["fate"] == "hatched").sum()),
        died=int(table["died"].sum()),
        edge=edge,
        together=_pattern(clustered)["together"],
    )


def tray_season(table, clustered) -> dict:
    """Facts of `figures.losses.tray_season`: the same over all batches, with the question that stands out."""
    return dict(
        batches=int(table["batches"].max()) if len(table) else 0,
        eggs=int(table["at_risk"].sum()),
        died=int(table["died"].sum()),
        **_pattern(clustered),
    )


def _pattern(clustered) -> dict:
    """Whether the place mattered, and the stronger of the two questions: together ("yes", "no", "few"), question."""
    if not len(clustered):
        return dict(together="few", question="neighbours", seen=0.0, expected=0.0)
    rows = clustered.set_index("question")
    both, alone = rows.loc["together"], rows.drop(index="together")
    first = alone.loc[alone["chance"].idxmin()]
    return dict(
        together="few" if both["smallest"] > CHANCE else "yes" if both["chance"] <= CHANCE else "no",
        question=str(first.name),
        seen=float(first["seen"]),
        expected=float(first["expected"]),
    )
