# Comment un tableau a été lu : pour quoi chaque colonne a été prise, à quel point c’est sûr, et pourquoi.

reading_words = { $when ->
        [day] { $field }, jour { PLAIN($day) }{ $transfer ->
            [yes] { " " }(transfert)
           *[no] { "" }
        }
        [transfer] { $field }, au transfert
        [order] { $field }, { $order ->
            [1] 1er mirage
            [2] 2e mirage
            [3] 3e mirage
           *[other] { PLAIN($order) }e mirage
        }
       *[none] { $field }
    }{ $within ->
        [yes] , partie de la colonne précédente
       *[no] { "" }
    }

field_eggs_set = œufs mis
field_clear = clairs
field_dead = morts
field_left = œufs restants
field_fertile = œufs fécondés
field_removed = retirés
field_rotten = pourris, retirés
field_cracked = fêlés, retirés
field_pipped = bêchés, morts
field_dis = morts en coquille
field_unhatched = non éclos
field_hatched = éclos
field_culled = écartés
field_weak = poussins faibles
field_malpos = mal placés
field_broken_infertile = ouverts : non fécondés
field_broken_early = ouverts : morts précoces
field_broken_mid = ouverts : morts du milieu
field_broken_late = ouverts : morts tardifs
field_healthy = poussins sains
field_total_dead = tous les morts ensemble
field_contaminated = contaminés
field_cracked_of = fêlés
field_opened1_infertile = clairs ouverts : non fécondés
field_opened1_dead = clairs ouverts : morts
field_set_at = date de mise
field_look_at = date du mirage
field_hatch_at = date de l’éclosion
field_first_hatch_at = premier poussin à
field_last_hatch_at = dernier poussin à
field_due = date prévue, non utilisée
field_date = date
field_laid_at = date de ponte, non utilisée
field_batch = nom de la couvée
field_breed = race
field_species = sorte d’oiseau
field_pen = parquet ou lot
field_keeper = éleveur
field_incubator = couveuse
field_hatcher = éclosoir
field_tray = plateau ou étage
field_hen = poule
field_cock = coq
field_notes = remarques
field_what = ce qui a été vu ou fait
field_number = nombre d’œufs
field_fate = sort de l’œuf
field_egg = numéro de l’œuf
field_place = place
field_signs = signes
field_posted = reçus par la poste
field_broody = sous une poule couveuse
field_result = ce qu’il en est advenu
field_tray_row = rangée sur le plateau
field_tray_col = colonne sur le plateau
field_stage_day = âge à la mort
field_eggs_weighed = œufs pesés
field_weight = poids
field_stored_days = jours de conservation
field_flock_age_weeks = âge du lot
field_look_day = jour du mirage
field_temperature = température
field_hour = heure
field_humidity = humidité
field_percent = une part, non utilisée
field_year = année
field_ignore = non utilisé
field_dead_in_shell = morts en coquille
field_pipped_dead = bêchés, morts

species_chicken = poules
species_duck = canards
species_goose = oies
species_turkey = dindes
species_quail = cailles
species_muscovy = canards de Barbarie
species_guinea = pintades
species_pheasant = faisans
species_bobwhite = colins de Virginie
species_chukar = chukar
species_emu = émeus
species_ostrich = autruches
species_peafowl = paons
species_pigeon = pigeons
species_partridge = perdrix
species_swan = cygnes
species_rhea = nandous
species_button_quail = cailles peintes
species_parrot = perroquets
species_mulard = canards mulards
species_mixed = plusieurs sortes

sure_sure = sûr
sure_likely = probable
sure_open = ouvert

why_words = les mots
why_adds_up = le compte est bon dans { $rows } lignes sur { $of ->
        [one] { $of }
       *[other] { $of }
    }
why_values = { $kind ->
        [dates] contient des dates
        [counts] contient des nombres
        [names] contient des noms
        [texts] contient des mots
        [birds] nomme des oiseaux
        [fates] dit ce que les œufs sont devenus
        [events] raconte des faits
        [shares] contient des parts
        [weights] contient des poids
        [running] compte 1, 2, 3
        [empty] est vide
       *[other] ses valeurs
    }
why_place = l’endroit où elle est
why_order = sa place parmi les mirages
why_span = le titre au-dessus
why_answer = vous l’avez dit
why_told = season.toml le dit
why_nothing = rien ne plaide pour autre chose
