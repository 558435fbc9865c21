"""Which language a season is spoken to in: the one that its keeper writes, or the one that season.toml names."""

from __future__ import annotations

from hatchkit.problems import problem
from hatchkit.say import LANGUAGES


def language_of_season(settings: dict, understood: list) -> tuple[str, list[dict]]:
    """The language of a season's surfaces.

    Parameters
    ----------
    settings : dict
        season.toml; its `language` decides.
    understood : list of Understood
        The tables read, each with the language of its words.

    Returns
    -------
    language : str
        One of `LANGUAGES`; English where the sheets differ or are in another tongue.
    problems : list of dict
        A note on that, once; empty otherwise.
    """
    told = str(settings.get("language") or "")
    if told in LANGUAGES:
        return told, []
    spoken = sorted({item.language for item in understood if item.kind and item.language})
    if len(spoken) == 1 and spoken[0] in LANGUAGES:
        return spoken[0], []
    if not spoken:
        return LANGUAGES[0], []
    code = "language_other" if len(spoken) == 1 else "language_mixed"
    return LANGUAGES[0], [problem("note", code=code, facts=dict(tongues=spoken))]
