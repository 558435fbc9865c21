# Worte auf Bildern (drawn_*) und was jedes Bild zeigt, für alle, die es nicht sehen können (picture_*).

# Wie Verluste mit der Dosis einer Phase gehen

drawn_dose_title = Verlorene Embryonen (% der zu Beginn lebenden)
drawn_dose_axis = Dosis von Hitze oder Kälte im Ei
    (1 mehr: etwa doppelt so viele Gradstunden)
drawn_dose_range = üblich
    ohne
    Phase
drawn_no_spell = { $batches ->
        [one] keine Phase (1 Brut)
       *[other] keine Phase ({ $batches } Bruten)
    }

picture_losses_against_dose = { $hit ->
        [0] Keine Brut erlebte eine Phase von Hitze oder Kälte im Ei, die zählt; es gibt nichts zu vergleichen.
       *[other] { $above ->
            [0] Von { $hit ->
                [one] der einen Brut
               *[other] den { $hit } Bruten
            } mit einer Phase von Hitze oder Kälte im Ei verlor keine mehr Embryonen, als Bruten ohne eine solche vermutlich verlieren.
           *[other] { $above } von { $hit } { $hit ->
                [one] Brut
               *[other] Bruten
            } mit einer Phase von Hitze oder Kälte im Ei verloren mehr Embryonen, als Bruten ohne eine solche vermutlich verlieren: am meisten { $worst }, { SHARE($worst_share) } (ohne Phase vermutlich höchstens { SHARE($worst_high) }).
        } Von { $free ->
            [one] 1 Brut
           *[other] { $free } Bruten
        } ohne solche Phase { $free_above ->
            [0] verlor keine
            [one] verlor 1
           *[other] verloren { $free_above }
        } mehr als das.
    }

# Wann Embryonen starben

drawn_age_axis = Alter (Tage seit dem Einlegen)
drawn_age_lost_axis = Verlorene Embryonen (% von { $eggs } lebenden)
drawn_share = { SHARE($share) }
drawn_band = 95-%-Band
drawn_no_known_end = Noch kein Ei mit bekanntem Verbleib

picture_death_age = { $deaths ->
        [0] Keiner von { $eggs } lebenden Embryonen ({ WORD($species, "species") }) starb.
       *[other] { SHARE($lost) } von { $eggs } lebenden Embryonen ({ WORD($species, "species") }) starben (95-%-Band { SHARE($low) } bis { SHARE($high) }); die größte Stufe, { SHARE($most_share) }, liegt zwischen Tag { NUMBER($most_from, maximumFractionDigits: 0) } und Tag { NUMBER($most_to, maximumFractionDigits: 0) }. An welchem Tag innerhalb einer Stufe, ist nicht bekannt.
    }

drawn_embryos_lost_axis = Verlorene Embryonen (%)
drawn_lost_end = { $who }: { SHARE($share) }

picture_age_against_season = Brut { $batch } verlor { SHARE($lost) } ihrer Embryonen, ihre Art in der Saison { SHARE($kin) } (95-%-Band { SHARE($low) } bis { SHARE($high) }): { $beyond ->
        [above] mehr als ihr Band
        [below] weniger als ihr Band
       *[within] innerhalb ihres Bandes
    }. { $step ->
        [0] Keine Stufe sticht hervor.
       *[other] Die größte Stufe, { SHARE($step) }, liegt zwischen Tag { NUMBER($day_from, maximumFractionDigits: 0) } und Tag { NUMBER($day_to, maximumFractionDigits: 0) }.
    }

# Ursachen

drawn_weight = { SHARE($share) }{ $tie ->
        [yes] { " " }(gleichauf)
       *[no] { "" }
    }

picture_ranked_causes = Brut { $batch }: { WORD($first, kind: "cause") } hat { SHARE($share) } des Gewichts unter allen möglichen Ursachen, { WORD($second, kind: "cause") } { SHARE($second_share) }{ $ties ->
        [0] .
       *[other] { ". " }Mit der ersten liegen { $ties } weitere gleichauf: die Aufzeichnungen können sie nicht trennen.
    }

drawn_what_if_stage = Verloren im Abschnitt (Raute: üblich)
drawn_what_if_cause = Zugerechnet
drawn_what_if_excursions = Ohne Phasen von Hitze und Kälte
drawn_what_if_chicks = Küken mehr, wenn die Todesfälle über dem Üblichen von ihnen kamen
drawn_what_if_number = { $eggs }{ $ranged ->
        [yes] { " " }({ $low } bis { $high })
       *[no] { "" }
    }{ $known ->
        [yes] { " " }(üblich { $usual })
       *[no] { "" }
    }

picture_what_if = Die meisten Eier der Saison gingen verloren als { WORD($stage, "drawn_stage") }: { $eggs }{ $usual ->
        [none] { "" }
       *[other] { " " }(üblich bei so vielen Eiern: { $usual })
    }. { $cause ->
        [none] Keine werden einer benannten Ursache zugerechnet.
       *[other] Unter den benannten Ursachen wird am meisten, etwa { $cause_eggs }, zugerechnet: { WORD($cause, kind: "cause") }.
    } { $spells ->
        [yes] Ohne Phasen von Hitze und Kälte etwa { $chicks } Küken mehr ({ $low } bis { $high }), wenn die Todesfälle über dem Üblichen von ihnen kamen.
       *[no] Ob Phasen von Hitze und Kälte Küken kosteten, lässt sich nicht sagen.
    }

drawn_stage_hatched = gesunde Küken
drawn_stage_culled = aussortierte Küken
drawn_stage_clear = klar oder unbefruchtet
drawn_stage_infertile = unbefruchtet
drawn_stage_early = früh abgestorben
drawn_stage_mid = in der Mitte abgestorben
drawn_stage_late = spät abgestorben
drawn_stage_pipped_dead = angepickt und gestorben
drawn_stage_removed = herausgenommen
drawn_stage_unaccounted = Verbleib unbekannt

drawn_ladder_for = spricht dafür
drawn_ladder_against = spricht dagegen
drawn_ladder_said = { $name }{ $said ->
        [none] { "" }
       *[other] , wie Sie notierten
    }
drawn_ladder_item = { $name }: { $value } (üblich { $usual })
drawn_ladder_pattern = wann und in welchem Abschnitt die Eier verloren gingen
drawn_ladder_before = wie häufig sie ist, neben Pech
drawn_strength = { $strength ->
        [for_very_strong] sehr stark
        [for_strong] stark
        [for_some] etwas
        [for_hardly] kaum
        [against_very_strong] sehr stark
        [against_strong] stark
        [against_some] etwas
        [against_hardly] kaum
        [unknown] nicht bekannt
       *[none] weder noch
    }

picture_ladder = Anzeichen bei Brut { $batch } für: { WORD($cause, kind: "cause") } (Gewicht { SHARE($share) }). { $for_kind ->
        [nothing] Nichts spricht dafür
        [pattern] Am stärksten dafür: wann und in welchem Abschnitt die Eier verloren gingen
        [before] Am stärksten dafür: wie häufig sie ist
        [item] Am stärksten dafür: { WORD($for_part, kind: "item") }
       *[sign] Am stärksten dafür: { WORD($for_part, kind: "sign") }
    }; { $against_kind ->
        [nothing] nichts spricht dagegen
        [pattern] am stärksten dagegen: wann und in welchem Abschnitt die Eier verloren gingen
        [before] am stärksten dagegen: dass sie seltener ist als Pech
        [item] am stärksten dagegen: { WORD($against_part, kind: "item") }
       *[sign] am stärksten dagegen: { WORD($against_part, kind: "sign") }
    }. { $unknown ->
        [0] Nichts, was darauf Einfluss hat, ist unbekannt.
        [one] Eines, was darauf Einfluss hat, ist nicht bekannt.
       *[other] { $unknown } Dinge, die darauf Einfluss haben, sind nicht bekannt.
    }

# Was anders war

drawn_nothing_different = Nichts von dem, was aufgeschrieben wurde, war anders als bei den guten Bruten.
drawn_away_less = weniger
drawn_away_usual = wie üblich
drawn_away_more = mehr
drawn_difference_words = { $name }: { $value } (gute Bruten: { $usual })

picture_differences = { $count ->
        [0] Nichts, was von Brut { $batch } aufgeschrieben wurde, war anders als bei den guten Bruten.
        [one] Eines war bei Brut { $batch } anders: { WORD($name, kind: "item") }, { $value } (üblich { $usual }).
       *[other] { $count } Dinge waren bei Brut { $batch } anders, am meisten: { WORD($name, kind: "item") }, { $value } (üblich { $usual }).
    }

picture_drawings = Einfache Zeichnungen geöffneter Eier, das stumpfe Ende mit der Luftkammer oben, in dieser Reihenfolge: { WORDS($looks, kind: "breakout_look") }.
drawn_swollen_neck =
    Nacken
    geschwollen
drawn_small_cell =
    kleine
    Luftkammer
drawn_large_cell =
    große
    Luftkammer
drawn_dry_skin = Haut straff und trocken
drawn_seen_from =
    von hinten, Luftkammer oben:
    R rechter Flügel, L linker
drawn_wing_R = R
drawn_wing_L = L
drawn_beak = Schnabel
drawn_no_vessels = keine Adern
drawn_look_of_days = { WORD($look, kind: "breakout_look") } (Tag { breakout_days })

# Verluste

drawn_no_batch = Keine Brut zu zeigen
drawn_eggs_set = eingelegte Eier
drawn_eggs_excess = mehr gezählt als eingelegt
drawn_good_chicks = gesunde Küken
drawn_share_of_set_axis = Anteil der eingelegten Eier (%)
drawn_chart_limit = übliche Grenze
drawn_chart_mean = Mittel
drawn_chart_axis = Bruten in der Reihenfolge des Einlegens
drawn_chart_title = { WORD($stage, "drawn_stage") } (% der { $of ->
        [fertile] nicht klaren oder unbefruchteten Eier
       *[set] eingelegten Eier
    })
drawn_tray = { $name ->
        [none] Horde
       *[other] Horde { $name }
    }
drawn_no_places = Von keinem Ei ist der Platz auf der Horde bekannt.
drawn_tray_machine = { $machine ->
        [none] { drawn_tray_plain }
       *[other] { $machine }: { drawn_tray_plain }
    }
drawn_tray_plain = { $tray ->
        [none] Horde
       *[other] Horde { $tray }
    }
drawn_tray_season_title = Auf jedem Platz gestorbene Embryonen (Zahl; Scheibe: Anteil)

picture_egg_ledger = Von { NUMBER($eggs_set, maximumFractionDigits: 0) } eingelegten Eiern ergaben { NUMBER($chicks, maximumFractionDigits: 0) } gesunde Küken{ $stage ->
        [none] . Nichts ging verloren.
       *[other] ; der größte Verlust sind { NUMBER($eggs, maximumFractionDigits: 0) } ({ WORD($stage, "drawn_stage") }), dann { $second ->
            [none] nichts weiter
           *[other] { NUMBER($second_eggs, maximumFractionDigits: 0) } ({ WORD($second, "drawn_stage") })
        }.
    }

picture_losses_by_group = { $count ->
        [0] Keine Gruppe hat einen Anteil zu zeigen.
        [one] { $best }: { SHARE($best_share) } der eingelegten Eier ergaben gesunde Küken.
       *[other] Gesunde Küken von den eingelegten Eiern: von { SHARE($worst_share) } ({ $worst }) bis { SHARE($best_share) } ({ $best }). { $worst } verlor am meisten als { WORD($stage, "drawn_stage") }, { SHARE($stage_share) } der Eier.
    }

picture_season_chart = { $outside ->
        [0] Von { $batches } Bruten in der Reihenfolge des Einlegens liegt keine außerhalb der üblichen Streuung ({ WORD($stage, "drawn_stage") }); das Mittel der Saison ist { SHARE($mean) }.
       *[other] Von { $batches } Bruten in der Reihenfolge des Einlegens { $outside ->
            [one] liegt
           *[other] liegen
        } { LIST($names) } außerhalb der üblichen Streuung ({ WORD($stage, "drawn_stage") }); das Mittel der Saison ist { SHARE($mean) }.
    }

picture_tray_map = Horde der Brut { $batch }: von { $eggs } Eiern mit bekanntem Platz schlüpften { $hatched } und { $died } Embryonen starben, { $edge } davon am Rand der Horde. { $together ->
        [yes] Die abgestorbenen lagen mehr beisammen, als der Zufall es will.
        [no] Die abgestorbenen lagen, wie der Zufall sie legt.
       *[other] Zu wenige starben, um zu fragen, ob sie beisammen lagen.
    }

picture_tray_season = In { $batches ->
        [one] 1 Brut
       *[other] { $batches } Bruten
    } mit bekannten Plätzen starben { $died } von { $eggs } Embryonen. { $together ->
        [yes] { $question ->
            [edge] Die Todesfälle waren zwischen Rand und Mitte ungleicher verteilt, als der Zufall es will: { SHARE($seen) } am Rand, wo { SHARE($expected) } Zufall wären.
           *[neighbours] Die abgestorbenen lagen mehr nebeneinander, als der Zufall es will: { NUMBER($seen, maximumFractionDigits: 0) } benachbarte Paare, wo { NUMBER($expected, maximumFractionDigits: 0) } Zufall wären.
        }
        [no] Der Platz auf der Horde machte keinen Unterschied, der vom Zufall zu trennen wäre.
       *[other] Zu wenige starben, um zu fragen, ob der Platz eine Rolle spielte.
    }

# Verluste neben Hitze und Kälte

drawn_window = { $name } ({ $batches ->
        [one] 1 Brut
       *[other] { $batches } Bruten
    } betroffen, { $deaths } abgestorben)
drawn_nothing_to_compare = nichts zu vergleichen
drawn_same = gleich
drawn_hazard_axis = Sterberate, wenn betroffen, als Vielfaches der anderen

picture_hazard_by_window = { $name ->
        [none] Kein Zeitraum lässt sich vergleichen: im selben Zeitraum braucht es Embryonen mit Hitze oder Kälte und andere ohne.
       *[other] Sterberate von Embryonen mit Hitze oder Kälte neben den anderen: am höchsten { $sure ->
            [yes] und mehr als Zufall
           *[no] , wobei Zufall nicht ausgeschlossen ist,
        } im Zeitraum bis { WORD($name, "drawn_look") }, { NUMBER($ratio, maximumFractionDigits: 1) }-mal (95-%-Bereich { NUMBER($low, maximumFractionDigits: 1) } bis { NUMBER($high, maximumFractionDigits: 1) }); { $clear ->
            [0] kein Zeitraum liegt klar über den anderen
            [one] 1 von { $count } Zeiträumen liegt klar über den anderen
           *[other] { $clear } von { $count } Zeiträumen liegen klar über den anderen
        }.
    }


drawn_look_candle1 = zum ersten Schieren
drawn_look_candle2 = zum zweiten Schieren
drawn_look_transfer = zum Umlegen
drawn_look_hatch = zum Schlupf

# Klima

drawn_timeline_title = Brüter { $machine }, °{ $unit }
drawn_no_readings = keine Messwerte
drawn_spell = { NUMBER($degrees, maximumFractionDigits: 0) }°, { NUMBER($hours, maximumFractionDigits: 0) } h
drawn_line_air = Luft
drawn_line_egg = Ei (gesch.)
drawn_line_range = gewünscht
drawn_line_everyday = Deckel offen
drawn_close_up_title = Brut { $batch }, Tag { NUMBER($day, maximumFractionDigits: 1) }: { $kind ->
        [warm] zu warm
       *[cold] zu kalt
    }
drawn_hours = { NUMBER($hours, maximumFractionDigits: 1) } h
drawn_worst_air = Luft { NUMBER($degrees, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }
drawn_worst_egg = Ei { NUMBER($degrees, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }

drawn_water_title = Brut { $batch }: Gewichtsverlust (% des Gewichts beim Einlegen)
drawn_water_target = Soll
    { SHARE($low) } bis
    { SHARE($high) }
drawn_water_expected = { $weighed ->
        [yes] erwartet
       *[no] vermutet
    }
    { SHARE($share) }
drawn_left_out = x  gewogen, weggelassen
drawn_no_weights = Vom Gewichtsverlust der Eier ist nichts bekannt.
drawn_water_axis = Gewichtsverlust beim Umlegen (% des Gewichts beim Einlegen)
drawn_water_key_target = Soll
drawn_water_key_weighed = gewogen
drawn_water_key_off = gewogen, neben dem Soll
drawn_water_key_unweighed = nicht gewogen: vermutet

drawn_clock_expected = erwartet
drawn_clock_seen = erstes bis letztes Küken
drawn_clock_inside = Mitte, wie erwartet
drawn_clock_outside = Mitte, nicht wie erwartet
drawn_clock_axis = Stunden neben der üblichen Zeit der Art (später: rechts)

drawn_no_probe = Es wurden keine Temperaturen aufgezeichnet.
drawn_probe = Brüter { $machine }, Fühler { $probe }
drawn_witness_checked = { $known ->
        [yes] nach Prüfung in Eis oder mit gutem Thermometer
       *[no] Prüfung in Eis oder mit gutem Thermometer: nicht geschehen
    }
drawn_witness_pair = { $known ->
        [yes] neben dem anderen Fühler ({ $other })
       *[no] neben dem anderen Fühler ({ $other }): keine gemeinsamen Messwerte
    }
drawn_witness_hatch = { $known ->
        [yes] danach, wann die Eier schlüpften ({ $batches ->
            [one] 1 Brut
           *[other] { $batches } Bruten
        })
       *[no] danach, wann die Eier schlüpften: nicht bekannt
    }
drawn_probe_axis = Zeigt zu wenig (links) oder zu viel (rechts), °{ $unit }
drawn_kelvin = { NUMBER($value, minimumFractionDigits: 1, maximumFractionDigits: 1) }°

picture_incubator_timeline = Luft und geschätzte Eitemperatur des Brüters { $machine } mit { $batches ->
        [one] 1 Brut
       *[other] { $batches } Bruten
    }{ $middle ->
        [none] { "" }
       *[other] : meist { NUMBER($middle, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }
    }. { $spells ->
        [0] Keine nennenswerte Phase von Hitze oder Kälte
        [one] Eine nennenswerte Phase
       *[other] { $spells } nennenswerte Phasen
    }{ $kind ->
        [none] { "" }
       *[other] , die schlimmste ab { DAY($when) }: { $kind ->
            [warm] zu warm
           *[cold] zu kalt
        } für { NUMBER($hours, maximumFractionDigits: 0) } h, die Luft bei { NUMBER($degrees, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }
    }; { $everyday ->
        [0] nichts Alltägliches
        [one] 1 alltägliches Öffnen oder Einlegen
       *[other] { $everyday }-mal alltägliches Öffnen oder Einlegen
    }; { $gaps ->
        [0] keine Lücke in der Aufzeichnung.
        [one] 1 Lücke in der Aufzeichnung.
       *[other] { $gaps } Lücken in der Aufzeichnung.
    }

picture_excursion_close_up = Brut { $batch } ab Tag { NUMBER($day, maximumFractionDigits: 1) } ({ MINUTE($when) }): { $kind ->
        [warm] zu warm
       *[cold] zu kalt
    } für { NUMBER($hours, maximumFractionDigits: 1) } h. Die Luft erreichte { NUMBER($air, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit }, das geschätzte Ei folgt später und erreichte { NUMBER($egg, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit } ({ NUMBER($egg_low, minimumFractionDigits: 1, maximumFractionDigits: 1) } bis { NUMBER($egg_high, minimumFractionDigits: 1, maximumFractionDigits: 1) }).

picture_weight_loss_track = { $weighed ->
        [yes] Brut { $batch }, gewogen: { $projected_share ->
            [none] was die Eier beim Umlegen verloren haben werden, lässt sich nicht sagen
           *[other] beim Umlegen werden die Eier { SHARE($projected_share) } ihres Gewichts verloren haben ({ SHARE($projected_low) } bis { SHARE($projected_high) })
        }
       *[no] Brut { $batch } wurde nicht gewogen; { $projected_share ->
            [none] von ihrem Verlust ist nichts bekannt
           *[other] nach Eigröße und Feuchte wird sie beim Umlegen etwa { SHARE($projected_share) } ihres Gewichts verloren haben ({ SHARE($projected_low) } bis { SHARE($projected_high) })
        }
    }; das Soll ist { SHARE($target_low) } bis { SHARE($target_high) }{ $verdict ->
        [too_little] : es ging zu wenig verloren.
        [too_much] : es ging zu viel verloren.
        [on_target] : im Soll.
       *[other] : ob das erreicht wird, lässt sich nicht sagen.
    }

picture_water_against_target = { $weighed ->
        [0] Keine von { $batches } Bruten wurde gewogen, darum stehen nur Vermutungen neben dem Soll.
       *[other] Von { $weighed ->
            [one] 1 gewogenen Brut
           *[other] { $weighed } gewogenen Bruten
        } { $right ->
            [0] ist keine
            [one] ist 1
           *[other] sind { $right }
        } im Soll, { $little ->
            [0] keine
           *[other] { $little } ({ LIST($little_names) })
        } verlor zu wenig Wasser, { $much ->
            [0] keine
           *[other] { $much } ({ LIST($much_names) })
        } zu viel.
    }

picture_hatch_clock = { $seen ->
        [0] Von keiner Brut sind die Schlupfzeiten aufgeschrieben.
       *[other] Von { $seen } Bruten, deren Schlupf gesehen wurde, { $early ->
            [0] kam keine
           *[other] kamen { $early }
        } früher, als Lagerung und Temperatur erwarten lassen{ $early ->
            [0] { "" }
           *[other] { " " }({ LIST($early_names) })
        }, { $late ->
            [0] keine
           *[other] { $late }
        } später{ $late ->
            [0] { "" }
           *[other] { " " }({ LIST($late_names) })
        }; am weitesten daneben war { $furthest }, { NUMBER($hours, maximumFractionDigits: 0) } h { $side ->
            [later] später
           *[other] früher
        }.
    }

picture_probe_truth = { $checked ->
        [0] { $probes ->
            [one] Der eine Fühler wurde nie geprüft.
           *[other] Keiner von { $probes } Fühlern wurde je geprüft.
        }
       *[other] { $checked } von { $probes } Fühlern wurden geprüft.
    } { $told ->
        [0] Die Schlupfzeiten weisen bei keinem auf einen Fehler hin.
       *[other] Nach den Schlupfzeiten zeigt der von Brüter { $machine } { NUMBER($error, minimumFractionDigits: 1, maximumFractionDigits: 1) } °{ $unit } zu { $side ->
            [high] viel an
           *[low] wenig an
        }.
    } { $disagree ->
        [0] { "" }
       *[other] Fühler widersprechen sich in Brüter { LIST($disagree_names) }.
    }

# Die Saison auf einen Blick, und die nächste Brut

drawn_machine = { $name ->
        [none] Brüter nicht bekannt
       *[other] Brüter { $name }
    }
drawn_degrees = { NUMBER($degrees, maximumFractionDigits: 0) }°
drawn_glance_bars = Balken: eine Brut, so hoch gefüllt, wie sie schlüpfte. ○ Schieren
drawn_glance_marks = ▲ zu warm  ▼ zu kalt: je größer, desto schlimmer
drawn_eggs_axis = Eingelegte Eier
drawn_eggs_title = Aussicht auf mindestens { $chicks } gesunde Küken (%)

picture_season_at_a_glance = { $batches ->
        [0] Keine Brut zu zeigen.
       *[other] { $batches ->
            [one] 1 Brut
           *[other] { $batches } Bruten
        } in { $machines ->
            [one] 1 Brüter
           *[other] { $machines } Brütern
        } vom { DAY($first) } bis { DAY($last) }. { $ended ->
            [0] Noch keine ist zu Ende.
           *[other] Gesunde Küken von den eingelegten Eiern: von { SHARE($worst_share) } ({ $worst }) bis { SHARE($best_share) } ({ $best }).
        } { $spells ->
            [0] Keine nennenswerte Phase von Hitze oder Kälte.
           *[other] { $spells ->
                [one] Eine nennenswerte Phase
               *[other] { $spells } nennenswerte Phasen
            } von Hitze oder Kälte, die größte in Brüter { $machine } ab { DAY($when) }: zu { $kind ->
                [warm] warm
               *[cold] kalt
            } für { NUMBER($hours, maximumFractionDigits: 0) } h.
        }
    }

picture_eggs_to_set = { $half ->
        [none] Keine einzelne Brut gibt { $chicks } gesunde Küken mit gleicher Aussicht für und wider.
       *[other] Für mindestens { $chicks } gesunde Küken braucht gleiche Aussicht { $half } Eier, { $eggs ->
            [none] und keine einzelne Brut gibt { SHARE($sure) } Sicherheit
           *[other] { SHARE($sure) } Sicherheit { $eggs }
        }, { $most ->
            [none] keine einzelne Brut 95 % Sicherheit
           *[other] 95 % Sicherheit { $most }
        }.
    }

drawn_temperature = Temperatur (°{ $unit })
drawn_ledger_lost = { $whole ->
        [yes] { $eggs }
       *[no] etwa { $eggs }
    }
drawn_no_clock = Für keine Brut ist eine Schlupfzeit zu erwarten.
account_usual = was Bruten gewöhnlich verlieren
account_not_explained = nicht erklärt
account_unaccounted = Eier mit unbekanntem Verbleib
