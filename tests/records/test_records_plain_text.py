"""Seasons kept in a plain text: a form, columns lined up with blanks, a diary; all invented."""

import pytest
from sheet_files import tidy_season

import hatchkit as hk
from hatchkit.problems import HatchkitError
from hatchkit.records.folder import read_folder
from hatchkit.records.plain_text import rows_of

LINED_UP = """\
Lot       Bird      Set on       Eggs   Clear  Dead germ  Hatched
-----------------------------------------------------------------
Shed 1    hens      04/07/2026     50       6          3       41
Shed 2    hens      21/08/2026     54       8          2       44
Duck 1    ducks     25/08/2026     30       5          1       24
-----------------------------------------------------------------
TOTAL                             134      19          6      109
"""
FORM = """\
Batch: Geese
Set: 10/3/2026
Eggs: 10
Clear: 2
Dead at candling: 1
Hatched: 7
"""
DIARY = """\
Hatching book 2026

Batch 1 (hens)
1 March    set 20 eggs
8 March    candled: 3 clear, 1 dead
22 March   13 hatched. 1 pipped and died, 2 dead in shell
"""
LOG = "time,temp_c\n" + "\n".join(f"2026-03-01 {hour:02d}:00,37.{hour % 7}" for hour in range(24))


@pytest.mark.parametrize("one_file", [True, False])
@pytest.mark.parametrize(
    "text, eggs, hatched",
    [(LINED_UP, [50, 54, 30], [41, 44, 24]), (FORM, [10], [7]), (DIARY, [20], [13])],
    ids=["lined_up", "form", "diary"],
)
def test_a_season_in_a_text_is_read(tmp_path, text, eggs, hatched, one_file):
    (tmp_path / "hatches.txt").write_text(text, encoding="utf-8")
    season = hk.load_season(tmp_path / "hatches.txt" if one_file else tmp_path)
    assert season.batches["eggs_set"].tolist() == eggs and season.batches["hatched"].tolist() == hatched
    assert set(season.batches["file"]) == {"hatches.txt"}


def test_rows_keep_the_numbers_of_their_lines():
    rows = rows_of(LINED_UP)
    assert len(rows) == len(LINED_UP.split("\n")) and rows[1] == [""]
    assert rows[0] == ["Lot", "Bird", "Set on", "Eggs", "Clear", "Dead germ", "Hatched"]
    assert rows[6] == ["TOTAL", "", "", "134", "19", "6", "109"]


def test_a_mark_parts_cells_and_commas_of_sentences_do_not():
    assert rows_of("batch;eggs\nA;12\nB;10") == [["batch", "eggs"], ["A", "12"], ["B", "10"]]
    assert rows_of("candled: 3 clear, 1 dead\nall well, warm\n")[0] == ["candled: 3 clear, 1 dead"]


def test_a_text_beside_a_table_is_not_read_as_one(tmp_path):
    tidy_season(tmp_path)
    before = read_folder(tmp_path)["batches"]
    (tmp_path / "notes.txt").write_text(FORM, encoding="utf-8")
    assert len(read_folder(tmp_path)["batches"]) == len(before)


def test_a_log_that_is_a_text_stays_a_log(tmp_path):
    (tmp_path / "A.txt").write_text(LOG, encoding="utf-8")
    read = read_folder(tmp_path)
    assert read["batches"].empty and len(read["readings"]) == 24


def test_a_text_without_a_batch_is_named_with_what_it_shows(tmp_path):
    (tmp_path / "shopping.txt").write_text("milk and bread\nfeed for the dog\n", encoding="utf-8")
    with pytest.raises(HatchkitError) as caught:
        read_folder(tmp_path)
    assert "shopping.txt" in str(caught.value) and "milk and bread" in str(caught.value)


def test_a_text_that_the_settings_name_as_a_log_is_no_table(tmp_path):
    (tmp_path / "season.toml").write_text('[incubators.A]\nfiles = "hatches.txt"\n', encoding="utf-8")
    (tmp_path / "hatches.txt").write_text(FORM, encoding="utf-8")
    with pytest.raises(HatchkitError):
        read_folder(tmp_path)


def test_changes_kept_in_a_table_of_their_own_leave_the_text_to_be_read(tmp_path):
    (tmp_path / "changes.csv").write_text("date,what\n2026-03-01,new thermometer\n", encoding="utf-8")
    (tmp_path / "hatches.txt").write_text(FORM, encoding="utf-8")
    assert read_folder(tmp_path)["batches"]["eggs_set"].tolist() == [10]
