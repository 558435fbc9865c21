"""Dates and years inside titles and sentences."""

import pytest

from hatchkit.records import times


@pytest.mark.parametrize(
    "text, wanted",
    [
        ("Hatch set 3 March 2025", [("3 March 2025", "date", "2025-03-03")]),
        ("d7", []),
        ("Brut 2025", [("2025", "year", "2025")]),
        ("Saison 2025/2026", [("2025", "year", "2025"), ("2026", "year", "2026")]),
        (
            "set 12 eggs 3.4. and 4/5, candled d7: 3 clear",
            [("3.4.", "date", "2025-04-03"), ("4/5", "date", "2025-05-04")],
        ),
        ("3-5 March 2025 hatch", [("3-5 March 2025", "date", "2025-03-03")]),
        (
            "am 3.4.2025 um 18 Uhr eingelegt, 10. Tag: 3 klar",
            [("3.4.2025 um 18 Uhr", "date", "2025-04-03T18")],
        ),
        ("Kükentagebuch März 2025", [("März 2025", "month", "2025-03-01")]),
        ("2 de marzo de 2025: 12 huevos", [("2 de marzo de 2025", "date", "2025-03-02")]),
        ("Batch 12, 24 eggs, 12.4 g, 37.5 °C, set 3 trays, 7:30", []),
        ("log_20250303_073000.csv", [("20250303", "date", "2025-03-03")]),
    ],
)
def test_find(text, wanted):
    found = times.find(text, True, 2025)
    assert [text[one.start : one.end] for one in found] == [words for words, _, _ in wanted]
    for one, (_, kind, value) in zip(found, wanted, strict=True):
        assert one.kind == kind
        assert str(one.moment).startswith(value)


def test_a_range_begins_with_its_first_day():
    assert str(times.find("hatched 30-31 May 2025")[0].moment)[:10] == "2025-05-30"
