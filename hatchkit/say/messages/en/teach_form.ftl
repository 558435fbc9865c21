# The answer form of a case: labels, the words of its lists, and the statements to tick.

teach_form_title = Answer form
teach_form_intro = Choose from the lists. Free words belong in the finding alone.
teach_form_case = Case
teach_form_batch = Batch asked about
teach_form_stage = Where most of the eggs were lost to the cause
teach_form_cause = Cause
teach_form_second_cause = Second cause, if there is one
teach_form_eggs_lost_low = Eggs lost to the cause: at least (80 % sure)
teach_form_eggs_lost_high = Eggs lost to the cause: at most (80 % sure)
teach_form_facts = Tick what is true and bears on your answer
teach_form_why = Your finding, in one or two sentences

teach_stage_infertile = clear or infertile (nothing to be seen)
teach_stage_early = early (days 1-7 of a hen's egg, the first third)
teach_stage_mid = mid (days 8-14, the second third)
teach_stage_late = late (days 15-21, shell not broken)
teach_stage_pipped = pipped (shell broken and died)
teach_stage_removed = rotten, taken out
teach_stage_none = nowhere: none can be told

teach_cause_none = none can be told
teach_cause_power_cut = power cut
teach_cause_drift_warm = thermostat drifted warm
teach_cause_drift_cool = thermostat drifted cool
teach_cause_lid_ajar = lid left ajar
teach_cause_overheating = short strong overheating
teach_cause_long_storage = eggs stored too long
teach_cause_low_fertility = poorly fertile flock
teach_cause_old_flock = old flock
teach_cause_humidity_low = air too dry
teach_cause_humidity_high = air too damp
teach_cause_dry_hatch = air too dry at hatch
teach_cause_turning_fault = eggs not turned as they should be
teach_cause_probe_high = probe reads high and the machine runs cool
teach_cause_probe_low = probe reads low and the machine runs warm
teach_cause_contaminated = rotten eggs spread through the tray

teach_fact_stage = In batch { $batch }, { $eggs } of { $of } eggs were lost as { $stage }; in the other batches together { $others } of { $others_of }.
teach_fact_luck = The hatch of batch { $batch }, { $eggs } of { $of }, lies within what luck alone gives beside the other batches' { $others } of { $others_of }.
teach_fact_same_hens = Batch { $other } has the same hens as batch { $batch }; { $eggs } of its { $of } eggs hatched.
teach_fact_same_days = Batch { $other } lay in the other machine on much the same days as batch { $batch }; { $eggs } of its { $of } eggs hatched.
teach_fact_nothing_shared = Batch { $other }, with other hens, another machine and other days than batch { $batch }, hatched { $eggs } of { $of }.
teach_fact_other_hatch = Of batch { $other }, { $eggs } of { $of } eggs hatched.
teach_fact_spell = The log of batch { $batch } shows a spell of about { $hours } h on day { $day }, at its worst { DEGREES($extreme) } ({ $extreme_f } °F).
teach_fact_no_spell = After its first day, the log of batch { $batch } shows the air nowhere more than 3 °C (5 °F) off for three hours or longer.
teach_fact_storage = The eggs of batch { $batch } had been stored { $days } days, those of the other batches { $low } to { $high }.
teach_fact_age = The hens of batch { $batch } were { $weeks } weeks old, those of the other batches { $low } to { $high }.
teach_fact_setter_rh = From setting to transfer the air of batch { $batch } averaged { $rh } % humidity, in the other runs of its machine { $low } to { $high } %.
teach_fact_hatch_rh = After the transfer the air of batch { $batch } averaged { $rh } % humidity, in the other runs of its machine { $low } to { $high } %.
teach_fact_last_chick = The last chick of batch { $batch } came on day { $day }, those of the other batches on day { $low } to { $high }.
teach_fact_remark = The remark on batch { $batch } says "{ $remark }".
teach_fact_clock = The clock of the log of machine { $incubator } is wrong by about { $hours } h.
teach_fact_same_machine = Batch { $other } lay in the same machine as batch { $batch }, next to it in time; { $eggs } of its { $of } eggs hatched.
