"""What the pictures of this room tell, as facts for ``say.text("picture_...", facts)``."""

from __future__ import annotations


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
    return dict(species=str(fit["species"]), eggs=float(fit["eggs"]), deaths=float(fit["deaths"]),
                lost=float(end["at_least"]), low=float(end["band_low"]), high=float(end["band_high"]),
                most_from=float(curve["day"].iloc[most]), most_to=float(curve["day"].iloc[most + 1]),
                most_share=float(rise.iloc[most]))
