"""The words in which keepers of the fourth world write signs and remarks (fourth_words.csv), in five languages."""

from __future__ import annotations

from pathlib import Path

import pandas as pd

WORDS = pd.read_csv(Path(__file__).with_suffix(".csv"), keep_default_na=False).set_index("topic")
TOPICS = list(WORDS.index)
ON_DAY = {
    "en": "{} on day {}",
    "de": "{} am {}. Tag",
    "fr": "{} au jour {}",
    "es": "{} el día {}",
    "it": "{} il giorno {}",
}


def sign(topic, language, ticks):
    """The sign as the workbook offers it, or in the keeper's words."""
    return WORDS.loc[topic, "tick" if ticks else language]


def remark(topic, language, day=None):
    """A remark, with the day since setting where the keeper names one."""
    words = WORDS.loc[topic, language]
    return words if day is None else ON_DAY[language].format(words, int(day))
