"""Every form of a date and clock time that is written is read back, or refused with a reason: never another time."""

import datetime as dt

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from hatchkit.records import times

EN = "January February March April May June July August September October November December".split()
MONTHS = {
    "de": "Januar Februar März April Mai Juni Juli August September Oktober November Dezember",
    "fr": "janvier février mars avril mai juin juillet août septembre octobre novembre décembre",
    "nl": "januari februari maart april mei juni juli augustus september oktober november december",
    "es": "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre",
    "it": "gennaio febbraio marzo aprile maggio giugno luglio agosto settembre ottobre novembre dicembre",
    "pt": "janeiro fevereiro março abril maio junho julho agosto setembro outubro novembro dezembro",
    "pl": "stycznia lutego marca kwietnia maja czerwca lipca sierpnia września października listopada grudnia",
    "cs": "ledna února března dubna května června července srpna září října listopadu prosince",
    "sv": "januari februari mars april maj juni juli augusti september oktober november december",
    "da": "januar februar marts april maj juni juli august september oktober november december",
    "hu": "január február március április május június július augusztus szeptember október november december",
}
DAYS = {
    "en": "Mon Tue Wed Thu Fri Sat Sun",
    "de": "Mo Di Mi Do Fr Sa So",
    "fr": "lundi mardi mercredi jeudi vendredi samedi dimanche",
    "nl": "ma di wo do vr za zo",
    "es": "lun mar mié jue vie sáb dom",
    "it": "lunedì martedì mercoledì giovedì venerdì sabato domenica",
    "pt": "seg ter qua qui sex sáb dom",
    "pl": "pon wt śr czw pt sob niedz",
    "cs": "po út st čt pá so ne",
    "sv": "mån tis ons tors fre lör sön",
    "da": "man tir ons tor fre lør søn",
    "hu": "hétfő kedd szerda csütörtök péntek szombat vasárnap",
}
_NTH = {1: "st", 2: "nd", 3: "rd", 21: "st", 22: "nd", 23: "rd", 31: "st"}


def _name(t, language="en"):
    return (EN if language == "en" else MONTHS[language].split())[t.month - 1]


def _half(t):
    return f"{t.hour % 12 or 12}:{t:%M} {'pm' if t.hour > 11 else 'am'}"


#: How a moment is written -> the same moment to the minute; True where day and month stand open.
WRITERS = [
    (False, lambda t: f"{t:%Y-%m-%d %H:%M:%S}"),
    (False, lambda t: f"{t:%Y-%m-%dT%H:%M}"),
    (False, lambda t: f"{t:%Y/%m/%d %H:%M}"),
    (False, lambda t: f"{t:%Y.%m.%d. %H:%M}"),
    (False, lambda t: f"{t:%Y%m%d_%H%M%S}"),
    (False, lambda t: f"{t:%Y%m%d%H%M}"),
    (False, lambda t: f"{t:%Y%m%dT%H%M%S}"),
    (False, lambda t: f"{t:%Y-%m-%d_%H-%M-%S}"),
    (False, lambda t: f"{t:%H:%M:%S} {t.day}/{EN[t.month - 1][:3]}/{t.year}"),
    (False, lambda t: f"{t.day}.{EN[t.month - 1][:3]}.{t.year},{t:%H:%M:%S}"),
    (False, lambda t: f"{t.day}/{EN[t.month - 1][:3]}/{t.year}:{t:%H:%M:%S}"),
    (False, lambda t: f"{DAYS['en'].split()[t.weekday()]} {EN[t.month - 1][:3]} {t.day:2} {t:%H:%M:%S} {t.year}"),
    (False, lambda t: f"{t.day} {_name(t)} {t.year} at {_half(t)}"),
    (False, lambda t: f"{_name(t)} {t.day}{_NTH.get(t.day, 'th')}, {t.year} {_half(t)}"),
    (False, lambda t: f"{t.day}-{_name(t)[:3]}-{t.year % 100:02} {t:%H:%M}"),
    (False, lambda t: f"den {t.day}. {_name(t, 'de')} {t.year} um {t.hour} Uhr {t:%M}"),
    (False, lambda t: f"le {t.day} {_name(t, 'fr')} {t.year} à {t.hour}h{t:%M}"),
    (False, lambda t: f"{t.day} de {_name(t, 'es')} de {t.year} {t:%H:%M}"),
    (False, lambda t: f"{t.year}. {_name(t, 'hu')} {t.day}. {t:%H:%M}"),
    (False, lambda t: f"{t.year}年{t.month}月{t.day}日 {t:%H:%M}"),
    (False, lambda t: f"{t.day}. {'I II III IV V VI VII VIII IX X XI XII'.split()[t.month - 1]}. {t.year} {t:%H:%M}"),
    *((False, lambda t, k=k: f"{t.day} {_name(t, k)} {t.year} {t:%H:%M}") for k in MONTHS),
    *((True, lambda t, k=k: f"{DAYS[k].split()[t.weekday()]} {t:%d.%m.%Y %H:%M}") for k in DAYS),
    (True, lambda t: f"{t:%d/%m/%Y %H:%M:%S}"),
    (True, lambda t: f"{t:%d.%m.%Y %H.%M}"),
    (True, lambda t: f"{t.day}.{t.month}.{t.year % 100:02} {t.hour}:{t:%M}"),
    (True, lambda t: f"{t:%d-%m-%Y %H:%M}"),
    (True, lambda t: f"{t:%H:%M} {t:%d/%m/%Y}"),
    (True, lambda t: f"{t.day} {t.month} {t.year} {t:%H:%M}"),
    (True, lambda t: f"{t.day}/{t.month}/{t.year}, {_half(t)}"),
    (True, lambda t: f"{t:%d/%m/%Y} kl. {t:%H.%M}"),
    (True, lambda t: f"{t.day}/{t.month}/{t.year} {t.hour}h{t:%M}"),
    (True, lambda t: f"{t:%d.%m.%Y} o godz. {t:%H:%M}"),
    (True, lambda t: f"{t:%d.%m.%Y}, alle ore {t:%H:%M}"),
]
MOMENTS = st.datetimes(dt.datetime(1970, 1, 1), dt.datetime(2068, 12, 31)).map(
    lambda t: t.replace(second=0, microsecond=0)
)


@settings(max_examples=60, deadline=None)
@given(t=MOMENTS)
def test_what_is_written_is_read_back(t):
    for is_open, write in WRITERS:
        text = write(t)
        found = times.read([text], True)
        assert found.moments[0] == np.datetime64(t), text
        assert found.hour_written[0] and found.reasons == {}
        assert times.gather([text]).open <= is_open


@settings(max_examples=60, deadline=None)
@given(t=MOMENTS)
def test_month_first_is_read_as_month_first(t):
    for write in (lambda t: f"{t:%m/%d/%Y %H:%M}", lambda t: f"{t.month}/{t.day}/{t.year % 100:02} {_half(t)}"):
        assert times.read([write(t)], False).moments[0] == np.datetime64(t)
        other = times.read([write(t)], True)
        # Read as day first it is another day that exists, or it fails with the reason.
        assert (t.day <= 12 and other.moments[0] == np.datetime64(t.replace(day=t.month, month=t.day))) or (
            t.day > 12 and other.reasons == {0: "order"} and np.isnat(other.moments[0])
        )
        assert t.day <= 12 or times.read([write(t)], True, swap=True).moments[0] == np.datetime64(t)


@pytest.mark.parametrize(
    "text, reason",
    [
        ("31.02.2026", "no such day"),
        ("2026-02-30 10:00", "no such day"),
        ("1.1.9999", "year"),
        ("3 March 1066", "year"),
        ("2025-03-03 25:10", "hour"),
        ("3.3.2025 10:75", "hour"),
        ("March 2025", "no day"),
        ("16 Feb", "no year"),
        ("3.4.", "no year"),
        ("soon", "not a date"),
        ("37.5", "not a date"),
        ("12 eggs", "not a date"),
        (37.5, "not a date"),
        ("0 pm 3.3.2025", "hour"),
        ("12", "not a date"),
        ("2025", "not a date"),
    ],
)
def test_what_cannot_be_read_says_why(text, reason):
    found = times.read([text], True)
    assert found.reasons == {0: reason} and np.isnat(found.moments[0])


@pytest.mark.parametrize(
    "text", ["16 Feb", "16. Februar", "Feb 16", "16/2", "16.2.", "Mo 16.2.", "16 lutego", "16. února"]
)
def test_a_date_without_a_year_takes_the_one_given(text):
    found = times.read([text], True, 2026)
    assert found.moments[0] == np.datetime64("2026-02-16") and not found.hour_written[0]


@pytest.mark.parametrize(
    "cell, seconds",
    [
        ("18.00.00", 64800),
        ("18.30", 66600),
        ("18,30", 66600),
        ("um 18 Uhr", 64800),
        ("18h30", 66600),
        ("18h", 64800),
        ("1830", 66600),
        ("7 pm", 68400),
        ("6 Uhr abends", 64800),
        ("kl. 18.30", 66600),
        ("7.30 a.m.", 27000),
        ("noon", 43200),
        ("mittags", 43200),
        ("12:30 a. m.", 1800),
        ("12 am", 0),
        ("12 pm", 43200),
    ],
)
def test_a_clock_time_of_a_column_of_its_own(cell, seconds):
    found = times.read(["3.4.2025"], True, clocks=[cell])
    assert found.moments[0] == np.datetime64("2025-04-03") + np.timedelta64(seconds, "s") and found.hour_written[0]


def test_a_bad_clock_time_leaves_the_day_and_says_so():
    found = times.read(["3.4.2025", "4.4.2025"], True, clocks=["25:10", "?"])
    assert (
        not np.isnat(found.moments).any()
        and not found.hour_written.any()
        and found.reasons == {0: "no hour", 1: "no hour"}
    )


def test_cells_that_are_no_text():
    cells = [
        dt.datetime(2025, 3, 3, 7, 30),
        dt.date(2025, 3, 3),
        times.Serial(45719.3125),
        times.Serial(45719),
        20250303,
        "1740987000",
        "1740987000000",
        None,
        float("nan"),
        "",
    ]
    found = times.read(cells)
    assert (
        found.moments[:7].astype("datetime64[m]").astype(str).tolist()
        == ["2025-03-03T07:30", "2025-03-03T00:00", "2025-03-03T07:30", "2025-03-03T00:00", "2025-03-03T00:00"]
        + ["2025-03-03T07:30"] * 2
    )
    assert found.hour_written.tolist()[:5] == [True, False, True, False, False]
    assert np.isnat(found.moments[7:]).all() and not {7, 8, 9} & set(found.reasons)
    assert (found.offset[5:7] == 0).all() and np.isnan(found.offset[:5]).all()


def test_plain_numbers_are_serials_only_where_they_are_marked():
    assert np.isnat(times.read([45719.5]).moments[0]) and np.isnat(times.read(["45719"]).moments[0])
    assert (
        times.read([45719.5, "45719,5"], serials=True).moments.astype("datetime64[h]").astype(str).tolist()
        == ["2025-03-03T12"] * 2
    )


@pytest.mark.parametrize(
    "text, offset",
    [
        ("2025-03-03T07:30:00Z", 0),
        ("2025-03-03T07:30:00.5+02:00", 7200),
        ("2025-03-03 07:30 -0530", -19800),
        ("03/Mar/2025:07:30:00 +0100", 3600),
        ("3 Mar 2025 07:30 CEST", 7200),
        ("2025-03-03 07:30 UTC+2", 7200),
        ("Mon, 03 Mar 2025 07:30:00 GMT", 0),
        ("2025-03-03T07:30:00-05:00[America/New_York]", -18000),
    ],
)
def test_a_zone_in_the_text_is_kept_beside_the_wall_clock(text, offset):
    found = times.read([text])
    assert found.offset[0] == offset and str(found.moments[0]).startswith("2025-03-03T07:30")


def test_a_table_with_six_columns():
    found = times.from_columns([2025, 25, 2025, 2025], [3, 3, 2, np.nan], [3, 3, 30, 1], [7, 7, 0, 0], [30, 30, 0, 0])
    assert found.astype("datetime64[m]").astype(str).tolist() == ["2025-03-03T07:30"] * 2 + ["NaT", "NaT"]


def test_long_columns_written_digit_under_digit_read_as_short_ones():
    moments = [dt.datetime(2024, 2, 27, 22) + n * dt.timedelta(minutes=37) for n in range(1500)]
    texts = [f"{t:%d.%m.%Y %H:%M}" for t in moments]
    texts[700], texts[701], texts[702] = "31.02.2024 10:00", "1.3.2024 7:05", "12.03.2024 25:00"
    found, alone = times.read(texts, True), [times.read([text], True) for text in texts]
    assert found.reasons == {700: "no such day", 702: "hour"}
    assert np.array_equal(found.moments, np.concatenate([a.moments for a in alone]), equal_nan=True)
