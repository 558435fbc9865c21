"""Tables of text in the encodings of their languages, as spreadsheet programs of these countries save them."""

import pytest

from hatchkit.records.code_pages import code_page, decode

TEXTS = [
    ("cp1250", "líheň;datum nasazení;vajec;vylíhlo;mrtvé\nč. 1;12.3.2026;42;31;5\n"),
    ("cp1250", "Číslo líhně,Nasazeno dne,Počet vajec,Neoplozená,Vylíhlo kuřat\n1,2026-03-01,42,5,31\n"),
    ("cp1250", "wylęg;data nałożenia;jaja;wykluło się;zamarłe\nA;1.03.2026;42;31;5\n"),
    ("cp1250", "naptár;dátum;tojás berakva;terméketlen;kikelt csibe, hőmérséklet\n1;2026.3.1;42;5;31\n"),
    ("cp1252", "Einlage;Datum;Eier eingelegt;unbefruchtet;geschlüpft\nA;1.3.2026;42;5;31\nKüken schwach;;;;\n"),
    ("cp1252", "couvée;date de mise;œufs;clairs;éclos\nA;01/03/2026;42;5;31\n"),
    ("cp1252", "puesta;fecha;huevos;infértiles;nacidos;año\n1;1/3/2026;42;5;31;2026\n"),
    ("cp1252", "lotto;data;uova;chiare;schiusi però più\n1;1/3/2026;42;5;31\n"),
    ("cp1252", "rugning;dato;æg lagt;ubefrugtede;klækket\n1;1.3.2026;42;5;31\n"),
    ("cp1252", "batch,notes\nA,temp was 39° for 2 h – then ½ died\n"),
    ("cp1251", "закладка;дата;яиц;неоплод;вывелось\n1;1.03.2026;42;5;31\n"),
    ("koi8_r", "закладка;дата;яиц;неоплод;вывелось\n1;1.03.2026;42;5;31\n"),
    ("cp1253", "παρτίδα;ημερομηνία;αυγά;άγονα;εκκολάφθηκαν\n1;1/3/2026;42;5;31\n"),
    ("cp1254", "kuluçka;tarih;yumurta;dölsüz;çıkan civciv\n1;1.3.2026;42;5;31\nışık söndü;;;;\n"),
    ("cp1257", "partija;data;kiaušinių;neapvaisinti;išsirito viščiukų\n1;2026-03-01;42;5;31\n"),
    ("cp1256", "دفعة,تاريخ,بيض,غير مخصب,فقس\n1,2026-03-01,42,5,31\n"),
    ("shift_jis", "ロット,入卵日,卵数,無精卵,孵化数\n1,2026-03-01,42,5,31\n"),
    ("gb18030", "批次,入孵日期,入孵蛋数,无精蛋,出雏数\n1,2026-03-01,42,5,31\n"),
    ("euc_kr", "배치,입란일,입란수,무정란,부화수\n1,2026-03-01,42,5,31\n"),
]


@pytest.mark.parametrize(("page", "text"), TEXTS)
def test_a_table_reads_as_it_was_written(page, text):
    assert decode(text.encode(page)) == text


@pytest.mark.xfail(strict=True, reason="the letters of these pages stand in the same places; few words do not tell")
@pytest.mark.parametrize(
    ("page", "text"),
    [
        ("cp1255", "אצווה,תאריך,ביצים,לא מופרות,בקעו\n1,2026-03-01,42,5,31\n"),
        ("koi8_r", "ЗАКЛАДКА;ДАТА;ЯИЦ\n1;1.03.2026;42\n"),
    ],
)
def test_a_few_words_in_hebrew_or_in_capitals_read_as_they_were_written(page, text):
    assert decode(text.encode(page)) == text


@pytest.mark.parametrize(
    "name", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "utf-32", "utf-32-le", "utf-32-be"]
)
def test_every_unicode_form_is_known_with_and_without_its_mark(name):
    text = TEXTS[0][1]
    assert decode(text.encode(name)) == text


def test_the_ninth_letter_of_the_czech_hatchery_stays_a_letter():
    assert "líheň" in decode(TEXTS[0][1].encode("cp1250"))
    assert code_page(TEXTS[0][1].encode("cp1250")) == "cp1250"


@pytest.mark.parametrize("raw", [b"\x00\x01\x02abc" * 50, b"ab\x00cd" * 10])
def test_what_is_no_text_is_none(raw):
    assert decode(raw) is None
