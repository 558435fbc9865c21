# The answer form of a case: labels, the words of its lists, and the statements to tick.

teach_form_title = Hoja de respuesta
teach_form_intro = Elija de las listas. Las palabras libres van solo en la conclusión.
teach_form_case = Caso
teach_form_batch = Lote preguntado
teach_form_stage = Dónde se perdió la mayoría de los huevos por la causa
teach_form_cause = Causa
teach_form_second_cause = Segunda causa, si la hay
teach_form_eggs_lost_low = Huevos perdidos por la causa: al menos (80 % de seguridad)
teach_form_eggs_lost_high = Huevos perdidos por la causa: como mucho (80 % de seguridad)
teach_form_facts = Marque lo que es cierto y cuenta para la respuesta
teach_form_why = Su conclusión, en una o dos frases

teach_stage_infertile = claro o infértil (nada que ver)
teach_stage_early = temprana (días 1-7 en gallina, primer tercio)
teach_stage_mid = media (días 8-14, segundo tercio)
teach_stage_late = tardía (días 15-21, cáscara entera)
teach_stage_pipped = picado y muerto
teach_stage_removed = podrido, retirado
teach_stage_none = en ninguna: no se puede saber

teach_cause_none = no se puede saber
teach_cause_power_cut = corte de luz
teach_cause_drift_warm = termostato desviado a caliente
teach_cause_drift_cool = termostato desviado a frío
teach_cause_lid_ajar = tapa mal cerrada
teach_cause_overheating = sobrecalentamiento corto y fuerte
teach_cause_long_storage = huevos almacenados demasiado tiempo
teach_cause_low_fertility = lote de aves poco fértil
teach_cause_old_flock = aves viejas
teach_cause_humidity_low = aire demasiado seco
teach_cause_humidity_high = aire demasiado húmedo
teach_cause_dry_hatch = aire demasiado seco al nacer
teach_cause_turning_fault = huevos mal volteados
teach_cause_probe_high = la sonda marca de más y la máquina va fría
teach_cause_probe_low = la sonda marca de menos y la máquina va caliente
teach_cause_contaminated = huevos podridos que contaminan la bandeja

teach_fact_stage = En el lote { $batch } se perdieron así { $eggs } de { $of } huevos: { $stage }; en los otros lotes juntos { $others } de { $others_of }.
teach_fact_luck = La eclosión del lote { $batch }, { $eggs } de { $of }, está dentro de lo que da el azar solo junto a { $others } de { $others_of } de los otros.
teach_fact_same_hens = El lote { $other } es de las mismas gallinas que el lote { $batch }; nacieron { $eggs } de sus { $of } huevos.
teach_fact_same_days = El lote { $other } estuvo en la otra máquina casi los mismos días que el lote { $batch }; nacieron { $eggs } de sus { $of } huevos.
teach_fact_nothing_shared = El lote { $other }, con otras gallinas, otra máquina y otros días que el lote { $batch }: { $eggs } de { $of } nacidos.
teach_fact_other_hatch = Del lote { $other } nacieron { $eggs } de { $of } huevos.
teach_fact_spell = El registro del lote { $batch } muestra el día { $day } un desvío de unas { $hours } h, en lo peor { DEGREES($extreme) } ({ $extreme_f } °F).
teach_fact_no_spell = Tras el primer día, el registro del lote { $batch } no muestra en ninguna parte el aire más de 3 °C (5 °F) desviado durante tres horas o más.
teach_fact_storage = Los huevos del lote { $batch } estuvieron almacenados { $days } días, los de los otros de { $low } a { $high }.
teach_fact_age = Las gallinas del lote { $batch } tenían { $weeks } semanas, las de los otros de { $low } a { $high }.
teach_fact_setter_rh = De la carga a la transferencia el aire del lote { $batch } tuvo de media { $rh } % de humedad, en los otros usos de la máquina de { $low } a { $high } %.
teach_fact_hatch_rh = Tras la transferencia el aire del lote { $batch } tuvo de media { $rh } % de humedad, en los otros usos de la máquina de { $low } a { $high } %.
teach_fact_last_chick = El último pollito del lote { $batch } salió el día { $day }, los de los otros del día { $low } al { $high }.
teach_fact_remark = La observación del lote { $batch } dice «{ $remark }».
teach_fact_clock = El reloj del registro de la máquina { $incubator } está mal por unas { $hours } h.
teach_fact_same_machine = El lote { $other } estuvo en la misma máquina que el lote { $batch }, el más cercano en el tiempo; nacieron { $eggs } de sus { $of } huevos.
