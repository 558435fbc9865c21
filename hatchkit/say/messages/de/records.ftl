# Was nicht so genommen werden konnte, wie es dasteht: gefunden, getan, zu ändern.

answers_unreadable =
    .found = die früher gegebenen Antworten sind nicht lesbar: { $path }
    .done = Sie werden nicht verwendet; was damals gefragt wurde, wird wieder gefragt.
    .fix = Löschen Sie die Datei und antworten Sie neu; hatchkit check ORDNER --ask.
answers_elsewhere =
    .found = { $count ->
        [one] eine Ihrer Antworten liegt
       *[other] { $count } Ihrer Antworten liegen
    } in { $path }, da in den Ordner der Saison nicht geschrieben werden kann
    .done = Verwendet.
answers_nowhere = Die Antworten konnten weder in { $folder } noch in den Arbeitsordner noch in Ihren eigenen Ordner geschrieben werden; starten Sie hatchkit in einem Ordner, in den Sie schreiben dürfen.

tables_in_season = { $path } liegt im Ordner der Saison selbst, wo seine Tabellen als Teil von ihr gelesen würden: nennen Sie einen anderen Ordner.
not_written = { $path } konnte nicht geschrieben werden: { $why }. Dort wurde nichts verändert.
tables_unwritable = In { $path } kann nicht geschrieben werden: { $why }.
tables_not_empty = { $path } enthält anderes ({ $names } ...): nennen Sie für die Tabellen einen neuen oder leeren Ordner.

language_other =
    .found = die Tabellen sind in einer anderen Sprache ({ TONGUES($tongues) })
    .done = Was zur Saison gesagt wird, ist englisch.
    .fix = Schreiben Sie language = "de" (oder "fr", "es", "en") in season.toml, um eine andere zu haben.
language_mixed =
    .found = die Tabellen sind in mehreren Sprachen ({ TONGUES($tongues) })
    .done = Was zur Saison gesagt wird, ist englisch.
    .fix = Schreiben Sie language = "de" (oder "fr", "es", "en") in season.toml, um eine andere zu haben.
language_unknown = Eine Sprache „{ $language }“ gibt es nicht; es gibt { LIST($known) }.
