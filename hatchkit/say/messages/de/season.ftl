# Die Seite der Saison: ihre Fragen in der Reihenfolge, in der sie gelesen werden, und was die Aufzeichnungen antworten.

page_season_title = { $name }: Rückblick auf die Saison
page_season_file = { $name }-Saison
page_season_counts = { $batches ->
        [0] Keine Brut konnte verwendet werden.
       *[other] { EGGS($set) ->
            [one] Ein Ei
           *[other] { EGGS($set) } Eier
        } eingelegt in { $batches ->
            [one] einer Brut
           *[other] { $batches } Bruten
        } ({ LIST($birds) }){ $first ->
            [none] { "" }
           *[day] , { $days ->
                [one] { DAY($first) }
               *[other] { DAY($first) } bis { DAY($last) }
            }
        }: { EGGS($hatched) ->
            [one] 1 gesundes Küken
           *[other] { EGGS($hatched) } gesunde Küken
        }, { $share_of_set ->
            [none] Anteil nicht bekannt.
           *[share] { SHARE($share_of_set) } der eingelegten Eier{ $share_of_developing ->
                [none] .
               *[share] , { SHARE($share_of_developing) } der nicht klaren.
            }
        }
    }
species_of = { WORD($key, kind: "species") }

## Was kostete am meisten?

ask_most = Was kostete am meisten?
most_cause = Am meisten kostete: { WORD($key, kind: "cause") }. Etwa { EGGS($eggs) } der { EGGS($lost) } verlorenen Eier ({ LIST($batches, most: 5) }).
most_cause_even = Je etwa { EGGS($eggs) } der { EGGS($lost) } verlorenen Eier: { WORD($key, kind: "cause") } und { $second }.
most_cause_shared = Keine Ursache steht allein vorn: { LIST($tied) } wiegen in { $batch } etwa gleich viel. Auf die erste entfallen etwa { EGGS($eggs) } der { EGGS($lost) } verlorenen Eier.
cause_alone = { WORD($key, kind: "cause") }
most_stage = Mehr Verluste als veröffentlicht, ohne dass eine Ursache hervorsticht: { WORD($key, kind: "loss") }, etwa { EGGS($eggs) } der { EGGS($lost) } verlorenen Eier.
most_records = { EGGS($eggs) ->
        [one] Von einem Ei ist
       *[other] Von { EGGS($eggs) } Eiern ist
    } der Verbleib unbekannt ({ LIST($batches, most: 5) }): bevor das aufgeschrieben ist, kann niemand sagen, was am meisten kostete.
most_rest = Danach kommen: { LIST($rest) }.
most_short_cause = { WORD($key, kind: "cause") }: { EGGS($eggs) } ({ LIST($batches, most: 4) })
most_short_stage = { WORD($key, kind: "loss") } über das Veröffentlichte hinaus: { EGGS($eggs) }
most_short_records = Eier mit unbekanntem Verbleib: { EGGS($eggs) }
most_none_finished = Was aus den Eiern wurde, ist nicht aufgeschrieben; darum lässt sich nicht sagen, was am meisten kostete.
most_none_finished_sure = Bevor ein Schlupf aufgeschrieben ist, lässt sich nichts beurteilen.
most_nothing = Keine Ursache und kein Abschnitt kostete so viele Eier, dass man sie an die erste Stelle setzen könnte: { $number ->
        [one] eine Brut
       *[other] { $number } Bruten
    }, nichts Auffälliges.
most_nothing_sure = Gewöhnliches Pech erklärt es; ein kleiner Schaden könnte sich in so wenigen Eiern verbergen.
most_unusual = Keine Ursache und kein Abschnitt lässt sich an die erste Stelle setzen, aber nicht alles ist Pech: { LIST($batches) } verlor in einem Abschnitt mehr, als Pech oft gibt.
most_unusual_sure = Sicher ist, dass es selten ist; was es war, sagen die Aufzeichnungen nicht.
most_poor = Keine Ursache und kein Abschnitt lässt sich an die erste Stelle setzen, obwohl der Schlupf deutlich unter dem Üblichen lag: { LIST($batches, most: 5) }.
most_poor_sure = Die Zahl ist sicher; was es war, sagen die Aufzeichnungen nicht.
most_sure_cause_firm = Ziemlich sicher in { $batch } ({ SHARE($share) } des Gewichts unter allen Ursachen). Aufzeichnungen zeigen hin; sie beweisen nicht.
most_sure_cause_probable = Wahrscheinlich in { $batch } ({ SHARE($share) } des Gewichts unter allen Ursachen), nicht sicher.
most_sure_cause_guess = Eine Vermutung unter anderen: { SHARE($share) } des Gewichts in { $batch }.
most_sure_stage_counted = Die Zahl ist sicher. Die Ursache ist nicht bekannt, und der veröffentlichte Wert gilt für Hühner und ist grob.
most_sure_stage_assumed = Viele starben zwischen zwei Schierterminen, darum ist der Abschnitt zum Teil angenommen; die Ursache ist nicht bekannt.
most_sure_records_counted = Die Zahl ist sicher: ob sie klar, abgestorben oder zerbrochen waren, weiß niemand.

eggs_of_cause = { WORD($key, kind: "cause") } ({ EGGS($eggs) })

## Wo blieben die Eier?

ask_lost = Wo blieben die Eier?
lost_most = { EGGS($lost) ->
        [0] Kein Ei ging verloren.
        [one] Ein Ei von { EGGS($set) } ergab kein gesundes Küken.
       *[other] { EGGS($lost) } von { EGGS($set) } Eiern ergaben kein gesundes Küken. Am häufigsten: { LIST($most) }.
    }
lost_clear = Klar heißt unbefruchtet oder so früh abgestorben, dass nichts zu sehen ist: nur ein geöffnetes Ei sagt es.
lost_method = Tag 0 ist die Stunde des Einlegens. In Klammern steht der 95-%-Bereich, in dem der wahre Anteil vermutlich liegt; für eine ganze Saison ist berücksichtigt, dass Bruten verschieden sind. Von { EGGS($dead) } abgestorbenen Embryonen starben { EGGS($shared) } zwischen zwei Schierterminen beiderseits einer Grenze; sie sind nach dem Sterbealter der Saison aufgeteilt. Bruchteile von Eiern sind so gerundet, dass die Summe bleibt.
table_stages = Eier nach dem Abschnitt, in dem sie verloren gingen
table_looks = Dieselben Todesfälle nach dem Schiertermin, an dem sie gefunden wurden
table_by_flock = Nach Zuchtstamm
table_by_incubator = Nach Brüter

## Welche Bruten waren schlecht?

ask_poor = Welche Bruten waren schlecht?
poor_batches = { $number ->
        [one] Eine von { $of } Bruten schlüpfte
       *[other] { $number } von { $of } Bruten schlüpften
    } deutlich schlechter, als hier üblich ist: { LIST($poor) }.
poor_none = Keine von { $of } Bruten schlüpfte deutlich schlechter, als hier üblich ist.
poor_one = { $batch } ({ EGGS($hatched) } von { EGGS($set) }{ $poor ->
        [clears] , wegen klarer Eier
        [removed] , wegen herausgenommener Eier
       *[embryos] { "" }
    })
poor_method = Jede Brut wird neben Ihre anderen Bruten derselben Art gestellt, einem veröffentlichten Wert angenähert, und der Unterschied zwischen Bruten ist berücksichtigt: einmal von den eingelegten Eiern, einmal von den Eiern, die weder klar waren noch herausgenommen wurden. Schlecht ist, was in einem davon um eine Streuung oder mehr darunter liegt.
table_batches = Gesunde Küken nach Brut
poor_embryos = ja, wegen abgestorbener Embryonen
poor_clears = ja, wegen klarer Eier
poor_removed = ja, wegen herausgenommener Eier
poor_unknown = nicht bekannt, Eier mit unbekanntem Verbleib
poor_no = nein

## Ist es mehr als Pech?

ask_luck = Ist es mehr als Pech?
luck_unusual = Ja: { LIST($unusual) }. Durch Pech kommt so viel etwa einmal in { $one_in } Bruten vor.
luck_by_published = { $comparisons ->
        [0] Gegen veröffentlichte Werte ja
       *[other] Gegen Ihre eigenen Bruten nein ({ $comparisons } Vergleiche), gegen veröffentlichte Werte ja
    }: In { LIST($published, most: 5) } ging in einem Abschnitt mehr verloren, als Pech oft gibt.
luck_one = { $batch }: { $eggs } von { EGGS($out_of) } { WORD($stage, kind: "loss") }, zu erwarten sind { EGGS($low) } bis { EGGS($high) }
luck_none = Nicht zu sehen: in { $comparisons } Vergleichen verlor keine Brut in einem Abschnitt mehr, als Pech geben kann.
luck_few = Das lässt sich nicht sagen: keine zweite Brut derselben Art wurde ebenso gezählt.
luck_refused = { $why }
luck_method = Jede Brut und jeder Abschnitt wird gegen Ihre anderen Bruten derselben Art gehalten, samt ihrer Streuung, und gegen veröffentlichte Werte. Bei so vielen Vergleichen kommt immer etwas Seltenes vor; das ist berücksichtigt (Benjamini-Hochberg).
table_rare = Die seltensten dieser Vergleiche, jeder für sich

## Unbefruchtet oder früh abgestorben?

ask_clears = Unbefruchtet oder früh abgestorben?
clears_none = Kein Ei war klar.
clears_not_counted = Das lässt sich nicht sagen: klare Eier wurden nicht gezählt.
clears_unopened = Das lässt sich nicht sagen: von { EGGS($clear) } klaren Eiern wurde keines geöffnet.{ $flocks ->
        [1] { "" }
       *[other] { " " }Die meisten sind vom Stamm { $flock }: { EGGS($worst_clear) } von { EGGS($worst_set) } Eiern.
    }
clears_opened = { EGGS($dead) ->
        [0] Keines
       *[other] { EGGS($dead) }
    } von { EGGS($opened) } geöffneten klaren Eiern enthielt einen toten Embryo; { EGGS($clear) } von { EGGS($set) } Eiern waren klar{ EGGS($barren) ->
        [0] { "" }
       *[other] , dazu { EGGS($barren) } beim Öffnen unbefruchtet
    }.{ $flocks ->
        [1] { "" }
       *[other] { " " }Die meisten sind vom Stamm { $flock }: { EGGS($worst_clear) } von { EGGS($worst_set) } Eiern{ EGGS($worst_opened) ->
        [0] , keines geöffnet
       *[other] { "" }
    }.
    }
clears_method = Wo kein klares Ei geöffnet wurde, liegt die Befruchtung irgendwo zwischen „alle waren unbefruchtet“ und „alle waren früh abgestorben“; die Tabelle nennt diesen Bereich. Was das Schieren zeigt, ist noch nicht die Befruchtung.
table_clears = Klare Eier und was sie über die Befruchtung sagen

## Wann starben sie?

ask_ages = Wann starben die Embryonen?
ages_stages = { $most ->
        [early] Die meisten starben früh
        [mid] Die meisten starben in den mittleren Tagen
       *[late] Die meisten starben spät
    }: { EGGS($early) } früh, { EGGS($mid) } in der Mitte, { EGGS($late) } spät; bei { EGGS($seen) } von { EGGS($dead) } wurde gesehen, dass sie dorthin gehören.
caption_species = { WORD($species, kind: "species") }

## Spielte der Platz auf der Horde eine Rolle?

ask_place = Spielte der Platz auf der Horde eine Rolle?
place_not_kept = Das lässt sich nicht sagen: die Plätze der Eier auf der Horde wurden nicht aufgeschrieben.
place_few = Das lässt sich nicht sagen: zu wenige Eier mit bekanntem Platz starben ab.
place_no_sign = Kein Anzeichen: { EGGS($deaths) } abgestorbene unter { EGGS($eggs) } Eiern liegen so, wie der Zufall sie legt.
place_pattern = { $where ->
        [together] Vielleicht: die abgestorbenen liegen beisammen
        [edge] Vielleicht: die abgestorbenen liegen am Rand
       *[middle] Vielleicht: die abgestorbenen liegen in der Mitte
    }, mehr als der Zufall es will (etwa 1 von { $one_in }); oft liegen auch Eier einer Henne beisammen.

## Wurde es im Lauf der Saison schlechter?

ask_course = Wurde es im Lauf der Saison schlechter?
course_refused = { $why }
course_unknown = Das lässt sich nicht sagen: zu wenige Bruten ({ WORD($species, kind: "species") }).
course_none = Vom Zufall nicht zu unterscheiden: die späten Todesfälle in { $batches } Bruten ({ WORD($species, kind: "species") }) nehmen weder zu noch ab{ COUNT($outside) ->
        [0] .
       [one] ; { LIST($outside) } fällt heraus.
       *[other] ; { LIST($outside) } fallen heraus.
    }
course_rise = Die späten Todesfälle ({ WORD($species, kind: "species") }) nehmen über { $batches } Bruten zu, mehr als der Zufall oft gibt.
course_fall = Die späten Todesfälle ({ WORD($species, kind: "species") }) nehmen über { $batches } Bruten ab, mehr als der Zufall oft gibt.

## Kosteten warme und kalte Phasen Embryonen?

ask_harm = Kosteten warme und kalte Phasen Embryonen?
harm_clear = Ein klares Anzeichen: etwa { EGGS($chicks_lost) } Küken ({ EGGS($chicks_low) } bis { EGGS($chicks_high) }) gingen in den { EGGS($exposed) } von { $batches } Bruten verloren, die es traf.
harm_some = Ein gewisses Anzeichen: etwa { EGGS($chicks_lost) } Küken ({ EGGS($chicks_low) } bis { EGGS($chicks_high) }) gingen in den { EGGS($exposed) } von { $batches } Bruten verloren, die es traf.
harm_clear_uncounted = Ein klares Anzeichen: die { EGGS($exposed) } von { $batches } Bruten, die es traf, verloren mehr Embryonen als die anderen.
harm_some_uncounted = Ein gewisses Anzeichen: die { EGGS($exposed) } von { $batches } Bruten, die es traf, verloren mehr Embryonen als die anderen.
harm_none = Kein Anzeichen, und doppelt so viele Todesfälle hätte man gesehen.
harm_cannot_tell = Aus diesen Aufzeichnungen lässt es sich nicht sagen.
harm_not_logged = Das lässt sich nicht sagen: solange Eier im Brüter waren, wurde keine Temperatur aufgezeichnet.
harm_log_it = Legen Sie ein aufzeichnendes Thermometer auf Eihöhe.
harm_not_proof = Dass die Phase die Ursache war, können Aufzeichnungen dieser Art nicht beweisen.
table_exposed = Zeiträume zwischen zwei Schierterminen, in denen die Eier zu warm oder zu kalt waren oder zu wenig aufgezeichnet wurde

## Was machte die Temperatur?

ask_spells = Was machte die Temperatur?
spells_found = { $told ->
        [one] Eine Phase ist
       *[other] { $told } Phasen sind
    } lesenswert: { LIST($spells) }. { $everyday ->
        [0] Sonst verließ nichts seinen Bereich.
        [one] Eine weitere ist alltäglich (Deckel offen, Eier eingelegt).
       *[other] { $everyday } weitere sind alltäglich (Deckel offen, Eier eingelegt).
    }
spells_none = Nichts Auffälliges: { $everyday ->
        [0] die Temperatur blieb in ihrem Bereich.
        [one] ein alltägliches Öffnen.
       *[other] { $everyday }-mal alltägliches Öffnen.
    }
spell = { $batch } { EGGS($hours) } h bei { DEGREES($extreme_c) }
table_spells = Lesenswerte Phasen; der Fühler misst die Luft, das Ei ist geschätzt

## Kann man den Thermometern glauben?

ask_probes = Kann man den Thermometern glauben?
probes_off = Nicht sicher: nach den Schlupfzeiten { LIST($probes) }.
probe_off = zeigt der Fühler von { $incubator } etwa { STEP($off) } zu { $way ->
        [high] viel an, sodass die Eier kühler waren, als die Aufzeichnung sagt
       *[low] wenig an, sodass die Eier wärmer waren, als die Aufzeichnung sagt
    }
probes_unchecked = Nicht bekannt: { $unchecked ->
        [one] ein Fühler wurde
       *[other] { $unchecked } Fühler wurden
    } nie geprüft. Lesen Sie sie in schmelzendem Eis ab oder neben einem Fieberthermometer.
probes_checked = Jeder Fühler wurde geprüft, und seine Abweichung ist eingerechnet.
table_machines = Die Brüter an gewöhnlichen Tagen

## Kam der Schlupf früh oder spät?

ask_clock = Früh oder spät?
clock_untimed = Das lässt sich nicht sagen: von keinem Schlupf sind die Stunden aufgeschrieben.
clock_on_time = Pünktlich: alle { $timed } Schlüpfe liegen in dem, was eine solche Vorhersage sagen kann.
clock_off = { $on_time } von { $timed } Schlüpfen kamen pünktlich{ COUNT($early) ->
        [0] { "" }
       *[other] ; früh: { LIST($early) }
    }{ COUNT($late) ->
        [0] { "" }
       *[other] ; spät: { LIST($late) }
    } (bis zu { EGGS($hours) } h).

## Verloren die Eier die richtige Menge Wasser?

ask_water = War der Wasserverlust richtig?
water_not_weighed = Das lässt sich nicht sagen: es wurden keine Eier gewogen.
water_on_target = { $weighed } von { $batches } Bruten wurden gewogen: { $on_target } im Soll{ $unsure ->
        [0] .
       *[other] , { $unsure } zu unsicher für ein Urteil.
    }
water_off = { $weighed } von { $batches } Bruten wurden gewogen: { $on_target } im Soll{ COUNT($little) ->
        [0] { "" }
       *[other] ; zu wenig verloren: { LIST($little) }
    }{ COUNT($much) ->
        [0] { "" }
       *[other] ; zu viel: { LIST($much) }
    }.
table_water = Bis zum Umlegen verlorenes Wasser, als Anteil am Gewicht beim Einlegen

## Was ging woran verloren?

ask_causes = Was ging woran verloren?
causes_account = Von { EGGS($lost) } verlorenen Eiern sind { EGGS($usual) } der übliche Verlust, { EGGS($not_explained) } sind nicht erklärt{ COUNT($causes) ->
        [0] , und keine Ursache lässt sich nennen.
       *[other] ; der Rest: { LIST($causes) }.
    }
causes_method = Jedes Ei zählt einmal. Eine Ursache bekommt die Eier über dem Üblichen, die zu ihr passen, mal ihr Gewicht in der Brut; Gewichte unter einem Zehntel bleiben weg.
table_account = Die Abrechnung der Saison: jedes Ei, das kein gesundes Küken ergab
cause_usual = was Bruten gewöhnlich verlieren
cause_not_explained = nicht erklärt
cause_unaccounted = Eier mit unbekanntem Verbleib

## Was nicht bekannt ist

season_unknown_cause = Eine Ursache: dies zeigt nur, was zusammenfiel. Ein Beweis braucht Eier eines Stammes in zwei Brütern.
season_unknown_clear = Unbefruchtet oder sehr früh abgestorben, solange klare Eier nicht geöffnet werden.
season_unknown_day = Der Tag eines Todes, genauer als zwei Schiertermine es erlauben.
season_unknown_probe = Ob ein Fühler richtig misst, außer er wurde in schmelzendem Eis und nahe { DEGREES($right) } geprüft.
season_unknown_illness = Stunden ohne Aufzeichnung, und Krankheiten: danach fragen Sie den Tierarzt.

## Überschriften der Tabellen

head_stage = Abschnitt oder Schiertermin
head_eggs = Eier
head_set = Eingelegte Eier
head_share_of_set = Der eingelegten
head_share_of_fertile = Der nicht klaren
head_share_of_transferred = Der umgelegten
head_batch = Brut
head_flock = Zuchtstamm
head_incubator = Brüter
head_poor = Schlecht?
head_out_of = Von
head_low = Zu erwarten ab
head_high = bis
head_one_in = Durch Pech 1 von
head_clear = Klar
head_opened = Geöffnet
head_opened_dead = Mit totem Embryo
head_share_fertile = Befruchtet
head_event = Nummer
head_day_start = Ab Tag
head_day_end = Bis Tag
head_hours = Stunden
head_extreme_c = Luft im Äußersten
head_egg_extreme_c = Ei im Äußersten
head_looks_like = Sieht aus
head_at_risk = Zu Beginn am Leben
head_died = Gestorben
head_hours_warm = Stunden zu warm
head_hours_cold = Stunden zu kalt
head_egg_peak_c = Wärmstes Ei
head_egg_min_c = Kühlstes Ei
head_share_logged = Aufgezeichnet
head_mean_c = Mittel
head_set_point_c = Sollwert
head_rh_mean_pct = Feuchte, %
head_share_lost = Bis zum Umlegen verloren
head_share_target = Gewünscht ab
head_share_target_high = bis
head_key = Verloren an
head_batches = Bruten
