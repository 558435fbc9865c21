# The answer form of a case: labels, the words of its lists, and the statements to tick.

teach_form_title = Antwortbogen
teach_form_intro = Bitte aus den Listen wählen. Freie Worte gehören nur in den Befund.
teach_form_case = Fall
teach_form_batch = Gefragte Brut
teach_form_stage = Wo die meisten Eier durch die Ursache verloren gingen
teach_form_cause = Ursache
teach_form_second_cause = Zweite Ursache, falls es eine gibt
teach_form_eggs_lost_low = Durch die Ursache verlorene Eier: mindestens (zu 80 % sicher)
teach_form_eggs_lost_high = Durch die Ursache verlorene Eier: höchstens (zu 80 % sicher)
teach_form_facts = Ankreuzen, was stimmt und für die Antwort zählt
teach_form_why = Ihr Befund, in ein oder zwei Sätzen

teach_stage_infertile = klar oder unbefruchtet (nichts zu sehen)
teach_stage_early = früh (Tag 1-7 beim Huhn, erstes Drittel)
teach_stage_mid = Mitte (Tag 8-14, zweites Drittel)
teach_stage_late = spät (Tag 15-21, Schale nicht angepickt)
teach_stage_pipped = angepickt und gestorben
teach_stage_removed = faul, herausgenommen
teach_stage_none = nirgends: nichts zu erkennen

teach_cause_none = nichts zu erkennen
teach_cause_power_cut = Stromausfall
teach_cause_drift_warm = Thermostat zu warm verstellt
teach_cause_drift_cool = Thermostat zu kühl verstellt
teach_cause_lid_ajar = Deckel offen gelassen
teach_cause_overheating = kurze starke Überhitzung
teach_cause_long_storage = Eier zu lange gelagert
teach_cause_low_fertility = Herde schlecht befruchtet
teach_cause_old_flock = alte Herde
teach_cause_humidity_low = Luft zu trocken
teach_cause_humidity_high = Luft zu feucht
teach_cause_dry_hatch = Luft beim Schlupf zu trocken
teach_cause_turning_fault = Eier nicht richtig gewendet
teach_cause_probe_high = Fühler zeigt zu hoch, Gerät läuft kühl
teach_cause_probe_low = Fühler zeigt zu niedrig, Gerät läuft warm
teach_cause_contaminated = faule Eier stecken die Horde an

teach_fact_stage = In Brut { $batch } gingen { $eggs } von { $of } Eiern so verloren: { $stage }; in den anderen Bruten zusammen { $others } von { $others_of }.
teach_fact_luck = Der Schlupf von Brut { $batch }, { $eggs } von { $of }, liegt in dem, was der Zufall allein neben den { $others } von { $others_of } der anderen Bruten gibt.
teach_fact_same_hens = Brut { $other } ist von denselben Hennen wie Brut { $batch }; { $eggs } von { $of } Eiern schlüpften.
teach_fact_same_days = Brut { $other } lag fast an denselben Tagen wie Brut { $batch } im anderen Gerät; { $eggs } von { $of } Eiern schlüpften.
teach_fact_nothing_shared = Brut { $other }, mit anderen Hennen, anderem Gerät und anderen Tagen als Brut { $batch }: { $eggs } von { $of } geschlüpft.
teach_fact_other_hatch = Von Brut { $other } schlüpften { $eggs } von { $of } Eiern.
teach_fact_spell = Das Protokoll von Brut { $batch } zeigt an Tag { $day } etwa { $hours } h lang eine Abweichung, schlimmstenfalls { DEGREES($extreme) } ({ $extreme_f } °F).
teach_fact_no_spell = Nach dem ersten Tag zeigt das Protokoll von Brut { $batch } die Luft nirgends drei Stunden oder länger mehr als 3 °C (5 °F) daneben.
teach_fact_storage = Die Eier von Brut { $batch } waren { $days } Tage gelagert, die der anderen Bruten { $low } bis { $high }.
teach_fact_age = Die Hennen von Brut { $batch } waren { $weeks } Wochen alt, die der anderen Bruten { $low } bis { $high }.
teach_fact_setter_rh = Vom Einlegen bis zum Umlegen hatte die Luft von Brut { $batch } im Mittel { $rh } % Feuchte, in den anderen Läufen des Geräts { $low } bis { $high } %.
teach_fact_hatch_rh = Nach dem Umlegen hatte die Luft von Brut { $batch } im Mittel { $rh } % Feuchte, in den anderen Läufen des Geräts { $low } bis { $high } %.
teach_fact_last_chick = Das letzte Küken von Brut { $batch } kam an Tag { $day }, das der anderen Bruten an Tag { $low } bis { $high }.
teach_fact_remark = Die Bemerkung zu Brut { $batch } lautet „{ $remark }“.
teach_fact_clock = Die Uhr im Protokoll von Gerät { $incubator } geht um etwa { $hours } h falsch.
teach_fact_same_machine = Brut { $other } lag im selben Gerät wie Brut { $batch }, zeitlich am nächsten; { $eggs } von { $of } Eiern schlüpften.
