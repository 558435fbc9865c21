# The answer form of a case: labels, the words of its lists, and the statements to tick.

teach_form_title = Feuille de réponse
teach_form_intro = Choisissez dans les listes. Les mots libres ne vont que dans le constat.
teach_form_case = Cas
teach_form_batch = Couvée en question
teach_form_stage = Où la plupart des œufs ont été perdus par la cause
teach_form_cause = Cause
teach_form_second_cause = Seconde cause, s'il y en a une
teach_form_eggs_lost_low = Œufs perdus par la cause : au moins (sûr à 80 %)
teach_form_eggs_lost_high = Œufs perdus par la cause : au plus (sûr à 80 %)
teach_form_facts = Cochez ce qui est vrai et compte pour la réponse
teach_form_why = Votre constat, en une ou deux phrases

teach_stage_infertile = clair ou infécond (rien de visible)
teach_stage_early = précoce (jours 1-7 chez la poule, premier tiers)
teach_stage_mid = milieu (jours 8-14, deuxième tiers)
teach_stage_late = tardif (jours 15-21, coquille intacte)
teach_stage_pipped = bêché et mort
teach_stage_removed = pourri, retiré
teach_stage_none = nulle part : rien de visible

teach_cause_none = rien de visible
teach_cause_power_cut = panne de courant
teach_cause_drift_warm = thermostat déréglé vers le chaud
teach_cause_drift_cool = thermostat déréglé vers le froid
teach_cause_lid_ajar = couvercle resté entrouvert
teach_cause_overheating = courte surchauffe forte
teach_cause_long_storage = œufs stockés trop longtemps
teach_cause_low_fertility = troupeau peu fécond
teach_cause_old_flock = troupeau âgé
teach_cause_humidity_low = air trop sec
teach_cause_humidity_high = air trop humide
teach_cause_dry_hatch = air trop sec à l'éclosion
teach_cause_turning_fault = œufs mal retournés
teach_cause_probe_high = sonde trop haute, machine froide
teach_cause_probe_low = sonde trop basse, machine chaude
teach_cause_contaminated = œufs pourris qui contaminent le plateau

teach_fact_stage = Couvée { $batch } : { $eggs } œufs sur { $of } perdus ainsi : { $stage } ; dans les autres couvées ensemble { $others } sur { $others_of }.
teach_fact_luck = L'éclosion de la couvée { $batch }, { $eggs } sur { $of }, est dans ce que le hasard seul donne à côté de { $others } sur { $others_of } dans les autres.
teach_fact_same_hens = La couvée { $other } vient des mêmes poules que la couvée { $batch } ; { $eggs } de ses { $of } œufs ont éclos.
teach_fact_same_days = La couvée { $other } était dans l'autre machine à peu près aux mêmes jours que la couvée { $batch } ; { $eggs } de ses { $of } œufs ont éclos.
teach_fact_nothing_shared = La couvée { $other }, d'autres poules, une autre machine et d'autres jours que la couvée { $batch } : { $eggs } éclos sur { $of }.
teach_fact_other_hatch = De la couvée { $other }, { $eggs } œufs sur { $of } ont éclos.
teach_fact_spell = Le relevé de la couvée { $batch } montre un écart d'environ { $hours } h au jour { $day }, au pire { DEGREES($extreme) } ({ $extreme_f } °F).
teach_fact_no_spell = Après le premier jour, le relevé de la couvée { $batch } ne montre nulle part l'air à plus de 3 °C (5 °F) d'écart pendant trois heures ou plus.
teach_fact_storage = Les œufs de la couvée { $batch } ont été stockés { $days } jours, ceux des autres { $low } à { $high }.
teach_fact_age = Les poules de la couvée { $batch } avaient { $weeks } semaines, celles des autres { $low } à { $high }.
teach_fact_setter_rh = De la mise au transfert, l'air de la couvée { $batch } avait en moyenne { $rh } % d'humidité, dans les autres passages de la machine { $low } à { $high } %.
teach_fact_hatch_rh = Après le transfert, l'air de la couvée { $batch } avait en moyenne { $rh } % d'humidité, dans les autres passages de la machine { $low } à { $high } %.
teach_fact_last_chick = Le dernier poussin de la couvée { $batch } est venu au jour { $day }, ceux des autres du jour { $low } au jour { $high }.
teach_fact_remark = La remarque sur la couvée { $batch } dit « { $remark } ».
teach_fact_clock = L'horloge du relevé de la machine { $incubator } est fausse d'environ { $hours } h.
teach_fact_same_machine = La couvée { $other } était dans la même machine que la couvée { $batch }, la plus proche dans le temps ; { $eggs } de ses { $of } œufs ont éclos.
