# Why a batch was poor, for who looks further: what fits a cause, what speaks against it, how its weight comes about.
reason_stage_more = { $eggs } { WORD($stage, kind: "loss") }, üblich sind { $usual }
reason_stage_few = nur { $eggs } { WORD($stage, kind: "loss") }, üblich sind { $usual }
reason_stage_none = keine { WORD($stage, kind: "loss") } ({ $eggs }), üblich sind { $usual }
reason_stage_not_explained = sie erklärt nicht: { $eggs } { WORD($stage, kind: "loss") }, üblich sind { $usual }
reason_stages = { OR($stages) }
reason_days_more = { $eggs } abgestorben { $by_day ->
        [none] nach Tag { TENTH($after_day) }
       *[other] zwischen Tag { TENTH($after_day) } und { $by_day }
    } ({ $stages }, welches ist nicht bekannt; üblich sind für beide zusammen { $usual })
reason_days_not_explained = sie erklärt nicht: { $eggs } abgestorben { $by_day ->
        [none] nach Tag { TENTH($after_day) }
       *[other] zwischen Tag { TENTH($after_day) } und { $by_day }
    } ({ $stages }, welches ist nicht bekannt; üblich sind für beide zusammen { $usual })
reason_any_pattern = sie lässt jedes Muster zu und passt deshalb nie gut
reason_good_chicks = { $good } gesunde Küken aus { $set } eingelegten Eiern; üblich sind { $usual }, und { $spread } mehr oder weniger kommen oft vor
reason_noted = von Ihnen notiert: { WORD($sign, kind: "sign") } („{ $said }“)
reason_lacking = fehlt: { WORD($item, kind: "needs") }
reason_item = { WORD($item, kind: "item") }: { $value }{ $usual ->
        [none] { "" }
       *[other] { " " }(in Ihren guten Bruten { $usual })
    }
reason_value = { $more ->
        [yes] +
       *[no] { "" }
    }{ $unit ->
        [share] { SHARE($value) }
        [degrees] { STEP($value) }
        [h] { $value } h
        [m] { $value } m
        [points] { $value } Punkte
        [humidity] { $value } % rF
        [days] { $value ->
            [one] 1 Tag
           *[other] { $value } Tage
        }
        [weeks] { $value ->
            [one] 1 Woche
           *[other] { $value } Wochen
        }
        [doublings] { TENTH($times) }-mal
        [tray] 1 zu { $one_in }
        [flag] { $value ->
            [0] nein
           *[other] ja
        }
       *[other] { $value }
    }
reason_limit_no_log = Für diese Brut wurde keine Temperatur aufgezeichnet; kein Urteil über Hitze oder Kälte kann fest sein.
reason_limit_probe = Eine Prüfung des Fühlers dieses Brüters ist nicht notiert; jedes Wort zur Temperatur gilt nur, wenn er richtig misst.
reason_limit_few = { $batches ->
        [0] Zum Vergleich gibt es keine andere Brut dieser Art
        [one] Zum Vergleich gibt es nur 1 andere Brut dieser Art
       *[other] Zum Vergleich gibt es nur { $batches } andere Bruten dieser Art
    }; dafür steht die veröffentlichte Aufstellung.
reason_limit_not_opened = Nicht geschlüpfte Eier wurden nicht geöffnet (oder nicht notiert); die Sterbealter sind grob.

# What was different, and the verdict.
different_name = { WORD($item, kind: "item") }: { $value }, bei den guten { $usual }
item_flock = Herde
item_pen = Stall
item_incubator = Brüter
item_shelf = Fach
item_hatcher = Schlupfbrüter
item_broody = Glucke
different_told = Was war diesmal anders, neben { $good ->
        [0] veröffentlichten Werten, denn eine gute Brut gibt es noch nicht
        [one] Ihrer einen guten Brut und veröffentlichten Werten
       *[other] Ihren { $good } guten Bruten
    }? { $count ->
        [0] Nichts Notiertes weicht ab.
       *[other] { $told }.
    }
verdict_confident = Brut { $batch }: sehr wahrscheinlich { WORD($cause, kind: "cause") } ({ SHARE($share) } des Gewichts).
verdict_probable = Brut { $batch }: wahrscheinlich, nicht sicher, { WORD($cause, kind: "cause") } ({ SHARE($share) } des Gewichts).
verdict_two_causes = Brut { $batch }: wahrscheinlich zweierlei: { WORD($first, kind: "cause") } (etwa { EGGS($eggs_first) } Eier) und { WORD($second, kind: "cause") } (etwa { EGGS($eggs_second) } Eier).
verdict_bad_luck = Brut { $batch }: gewöhnliches Pech genügt als Erklärung ({ SHARE($share) } des Gewichts); keine Ursache sticht heraus.
verdict_cannot_tell = Brut { $batch }: Die Aufzeichnungen können es nicht sagen{ $clears ->
        [yes] , nämlich was sie klar machte
       *[no] { "" }
    }.
verdict_luck_or_unknown = Gewöhnliches Pech hat das meiste Gewicht, doch was aus so vielen Eiern wurde, ist nicht bekannt.
verdict_too_little = Das meiste Gewicht hat: { WORD($cause, kind: "cause") } ({ SHARE($share) }), zu wenig, um sie zu nennen.
verdict_fits = Dafür spricht: { $told }.
verdict_against = Dagegen spricht: { $told }.
verdict_unknown = Nicht bekannt: { $told }.
verdict_tied = So gut wie gleichauf: { $told }{ $more ->
        [0] { "" }
       *[other] { " " }und { $more } weitere
    }.
verdict_clears = Der Verlust sind vor allem klare Eier: { $eggs } von { $set } Eiern, üblich sind { $usual }. { $opened ->
        [none] Öffnen Sie sie beim nächsten Schieren: kein Keim heißt die Hähne, ein abgestorbener Lagerung oder Wärme.
       *[other] Von den geöffneten hatten { SHARE($opened) } einen Keim, der abgestorben war.
    }
verdict_many_unaccounted = { EGGS($eggs) ->
        [one] Von 1 der { EGGS($set) } eingelegten Eier der Brut { $batch } ist der Verbleib unbekannt
       *[other] Von { EGGS($eggs) } der { EGGS($set) } eingelegten Eier der Brut { $batch } ist der Verbleib unbekannt
    }; deshalb lässt sich keine Ursache sicher nennen.
verdict_unaccounted = { EGGS($eggs) ->
        [one] Von 1 der { EGGS($set) } eingelegten Eier der Brut { $batch } ist der Verbleib unbekannt
       *[other] Von { EGGS($eggs) } der { EGGS($set) } eingelegten Eier der Brut { $batch } ist der Verbleib unbekannt
    }.
verdict_sign = { WORD($sign, kind: "sign") } (aus „{ $said }“)
verdict_signs = Aus Ihren Worten gelesene Zeichen: { $read }.
verdict_remark = Ihre Bemerkung zu dieser Brut: „{ $remark }“.

# How the weight of a cause comes about.
weight_of = Wie das Gewicht zustande kommt: { WORD($cause, kind: "cause") } (so vielmal so wahrscheinlich mit der Ursache wie mit Pech):
weight_pattern = die Tage und Abschnitte, in denen Eier verloren gingen
weight_second = ihr Teil am Gewicht von zwei Ursachen zusammen
weight_not_known = { WORD($item, kind: "item") }: nicht bekannt
weight_once = { $what } (dieselbe Tatsache zählt darunter oder darüber)
weight_together = alles zusammen{ $ways ->
        [one] { "" }
       *[other] ; das Gewicht der Ursache ist das Mittel über ihre { $ways } Alter oder Verzögerungen, von denen dies das wahrscheinlichste ist
    }. Vor dem Hinsehen hatte sie { SHARE($prior) } des Gewichts, danach { SHARE($share) }.
weight_line = { $size ->
        [beyond] × über 100 000
        [large] × { $factor }
       *[small] × { $factor }
    }  { $what }

# Evidence items: what each is, and what it needs.
item_heat = Hitze gegen die, die in diesem Alter den Schlupf halbierte
item_cold = durch Kälte verlorene Stunden der Entwicklung
item_transfer_chill = um das Umlegen verlorene Stunden der Entwicklung
item_log_level = aufgezeichnete Temperatur gegen die gewünschte
item_clock = erstes Küken gegen die übliche Stunde
item_clock_machine = dasselbe bei den anderen Bruten dieses Brüters
item_hatch_spread = vom ersten zum letzten Küken
item_water_loss = Wasserverlust bis zum Umlegen gegen das Ziel der Art
item_rh_set = Feuchte während der Brut gegen den Bereich der Art
item_rh_hatch = Feuchte beim Schlupf gegen den Bereich der Art
item_storage = Lagertage über die beste Dauer hinaus
item_flock_age = Wochen der Hennen außerhalb von 26 bis 60
item_flock_clears = Klare der anderen Bruten dieser Herde gegen andere Herden
item_flock_deaths = frühe und mittlere Tote der anderen Bruten dieser Herde gegen andere Herden
item_tray = Tote auf einem Teil der Horde gehäuft (so selten durch Zufall)
item_probe_gap = Unterschied zwischen den Fühlern des Brüters
item_malpositions = Fehllagen unter den spät Abgestorbenen
item_contaminated = faule Eier an den eingelegten
item_cracked = angeknackste Eier an den eingelegten
item_altitude = Höhe des Ortes
item_posted = Eier, die per Post kamen
item_flock_own = ob die Herde eine andere ist als bei den guten Bruten
item_clears_opened = beim ersten Schieren geöffnete Klare mit Keim
needs_heat = Temperaturwerte
needs_cold = Temperaturwerte
needs_log_level = Temperaturwerte
needs_transfer_chill = Temperaturwerte um das Umlegen
needs_clock = Stunde des ersten oder letzten Kükens
needs_clock_machine = Schlupfzeiten zweier anderer Bruten dieses Brüters
needs_hatch_spread = Stunden des ersten und letzten Kükens
needs_water_loss = Gewichte beim Einlegen und später
needs_rh_set = Feuchtewerte
needs_rh_hatch = Feuchtewerte nach dem Umlegen
needs_storage = Lagertage der Eier
needs_flock_age = Alter der Legehennen
needs_flock_clears = andere Bruten dieser und einer weiteren Herde zum Vergleich
needs_tray = Reihe und Spalte jedes Eies
needs_probe_gap = zwei Fühler im Brüter
needs_malpositions = Zahl der Fehllagen
needs_contaminated = Zahl der faulen Eier
needs_cracked = Zahl der angeknacksten Eier
needs_altitude = Höhe des Ortes (altitude_m in den Einstellungen)
needs_posted = ob die Eier per Post kamen
needs_flock_own = Herden dieser und zweier anderer Bruten
needs_clears_opened = beim ersten Schieren geöffnete Klare
needs_flock_deaths = andere Bruten dieser und einer weiteren Herde zum Vergleich

# Signs of what happened, beside those that are seen (workbook.ftl).
sign_power_cut = Stromausfall
sign_chilled = Eier wurden kalt
sign_overheated = es wurde zu heiß
sign_turner_stopped = die Wendung fiel aus
sign_turned_late = bis in die letzten Tage gewendet
sign_vents_shut = Lüftung zu oder schlechte Luft
sign_ran_dry = das Wasser ging aus
sign_opened_often = beim Schlupf oft geöffnet
sign_posted = Eier kamen per Post
sign_shaken_frosty = vor dem Einlegen geschüttelt, gefroren oder zu warm gelagert
sign_dirty_washed = schmutzige oder gewaschene Eier
sign_disinfected = während der Brut desinfiziert
sign_fumes = Dämpfe oder Farbe im Raum
sign_transfer_jolted = Stoß oder Kälte beim Umlegen
sign_stored_small_end_up = Spitze nach oben
sign_fan_stopped = der Ventilator stand
sign_poor_feed = schlechtes oder altes Futter der Zuchttiere
sign_ill_flock = Krankheit in der Herde
sign_cock_trouble = ein Hahn, der krank, alt, weg oder mit zu vielen Hennen ist
sign_eggs_old = lange gelagerte Eier
sign_old_hens = Eier alter oder sehr junger Hennen
sign_ran_warm = durchweg etwas zu warm
sign_ran_cool = durchweg etwas zu kühl
sign_damp_air = zu feucht im Brüter
sign_dry_air = zu trocken im Brüter
sign_hatch_without_water = kein Wasser zum Schlupf
sign_uneven_machine = warme und kalte Stellen im Brüter
sign_lowland_eggs = Eier aus dem Tal in der Höhe eingelegt
sign_hatcher_dirty = ungereinigter Schlupfbrüter
sign_covered_machine = ein zugedeckter Brüter
sign_floor_eggs = Bodeneier
