# Cómo se leyó una tabla: por qué se tomó cada columna, con qué seguridad y por qué.

reading_words = { $when ->
        [day] { $field }, día { PLAIN($day) }{ $transfer ->
            [yes] { " " }(traslado)
           *[no] { "" }
        }
        [transfer] { $field }, en el traslado
        [order] { $field }, { $order ->
            [1] 1.ª ovoscopia
            [2] 2.ª ovoscopia
            [3] 3.ª ovoscopia
           *[other] { PLAIN($order) }.ª ovoscopia
        }
       *[none] { $field }
    }{ $within ->
        [yes] , parte de la columna anterior
       *[no] { "" }
    }

field_eggs_set = huevos puestos a incubar
field_clear = claros
field_dead = muertos
field_left = huevos que quedan
field_fertile = huevos fértiles
field_removed = retirados
field_rotten = podridos, retirados
field_cracked = agrietados, retirados
field_pipped = picados, muertos
field_dis = muertos en cáscara
field_unhatched = sin nacer
field_hatched = nacidos
field_culled = descartados
field_weak = pollitos débiles
field_malpos = mal colocados
field_broken_infertile = abiertos: infértiles
field_broken_early = abiertos: muertos tempranos
field_broken_mid = abiertos: muertos a media incubación
field_broken_late = abiertos: muertos tardíos
field_healthy = pollitos sanos
field_total_dead = todos los muertos juntos
field_contaminated = contaminados
field_cracked_of = agrietados
field_opened1_infertile = claros abiertos: infértiles
field_opened1_dead = claros abiertos: muertos
field_set_at = fecha de puesta a incubar
field_look_at = fecha de la ovoscopia
field_hatch_at = fecha del nacimiento
field_first_hatch_at = primer pollito a las
field_last_hatch_at = último pollito a las
field_due = fecha prevista, no usada
field_date = fecha
field_laid_at = fecha de puesta, no usada
field_batch = nombre de la tanda
field_breed = raza
field_species = clase de ave
field_pen = corral o lote
field_keeper = criador
field_incubator = incubadora
field_hatcher = nacedora
field_tray = bandeja o estante
field_hen = gallina
field_cock = gallo
field_notes = notas
field_what = lo que se vio o se hizo
field_number = número de huevos
field_fate = fin del huevo
field_egg = número del huevo
field_place = lugar
field_signs = señales
field_posted = enviados por correo
field_broody = bajo una clueca
field_result = qué fue de ello
field_tray_row = fila en la bandeja
field_tray_col = columna en la bandeja
field_stage_day = edad al morir
field_eggs_weighed = huevos pesados
field_weight = peso
field_stored_days = días guardados
field_flock_age_weeks = edad del lote
field_look_day = día de la ovoscopia
field_temperature = temperatura
field_hour = hora
field_humidity = humedad
field_percent = una proporción, no usada
field_year = año
field_ignore = no usado
field_dead_in_shell = muertos en cáscara
field_pipped_dead = picados, muertos

species_chicken = gallinas
species_duck = patos
species_goose = gansos
species_turkey = pavos
species_quail = codornices
species_muscovy = patos criollos
species_guinea = gallinas de Guinea
species_pheasant = faisanes
species_bobwhite = colines de Virginia
species_chukar = chukar
species_emu = emúes
species_ostrich = avestruces
species_peafowl = pavos reales
species_pigeon = palomas
species_partridge = perdices
species_swan = cisnes
species_rhea = ñandúes
species_button_quail = codornices enanas
species_parrot = loros
species_mulard = patos mulard
species_mixed = varias clases

sure_sure = seguro
sure_likely = probable
sure_open = abierto

why_words = las palabras
why_adds_up = cuadra en { $rows } de { $of ->
        [one] { $of } fila
       *[other] { $of } filas
    }
why_values = { $kind ->
        [dates] contiene fechas
        [counts] contiene recuentos
        [names] contiene nombres
        [texts] contiene palabras
        [birds] nombra aves
        [fates] dice qué fue de los huevos
        [events] cuenta sucesos
        [shares] contiene proporciones
        [weights] contiene pesos
        [running] cuenta 1, 2, 3
        [empty] está vacía
       *[other] sus valores
    }
why_place = dónde está
why_order = su lugar entre las ovoscopias
why_span = el encabezado de arriba
why_answer = usted lo dijo así
why_told = season.toml lo dice así
why_nothing = nada habla a favor de otra cosa
