# How a sheet was read: what each column was taken for, how sure, and why. field_* names a field of the kit.

reading_words = { $when ->
        [day] { $field }, day { PLAIN($day) }{ $transfer ->
            [yes] { " " }(transfer)
           *[no] { "" }
        }
        [transfer] { $field }, at transfer
        [order] { $field }, { $order ->
            [1] 1st look
            [2] 2nd look
            [3] 3rd look
           *[other] look { PLAIN($order) }
        }
       *[none] { $field }
    }{ $within ->
        [yes] , part of the column before
       *[no] { "" }
    }

field_eggs_set = eggs set
field_clear = clear
field_dead = dead
field_left = eggs left
field_fertile = fertile eggs
field_removed = taken out
field_rotten = rotten, taken out
field_cracked = cracked, taken out
field_pipped = pipped, died
field_dis = dead in shell
field_unhatched = not hatched
field_hatched = hatched
field_culled = culled
field_weak = weak chicks
field_malpos = malpositioned
field_broken_infertile = opened: infertile
field_broken_early = opened: early dead
field_broken_mid = opened: mid dead
field_broken_late = opened: late dead
field_healthy = healthy chicks
field_total_dead = all dead together
field_contaminated = contaminated
field_cracked_of = cracked
field_opened1_infertile = clears opened: infertile
field_opened1_dead = clears opened: dead
field_set_at = date set
field_look_at = date of the look
field_hatch_at = date of the hatch
field_first_hatch_at = first chick at
field_last_hatch_at = last chick at
field_due = date due, not used
field_date = date
field_laid_at = date laid, not used
field_batch = name of the batch
field_breed = breed
field_species = kind of bird
field_pen = pen or flock
field_keeper = keeper
field_incubator = incubator
field_hatcher = hatcher
field_tray = tray or shelf
field_hen = hen
field_cock = cock
field_notes = notes
field_what = what was seen or done
field_number = number of eggs
field_fate = fate of the egg
field_egg = number of the egg
field_place = place
field_signs = signs
field_posted = sent by post
field_broody = under a broody hen
field_result = what became of it
field_tray_row = row on the tray
field_tray_col = column on the tray
field_stage_day = age when it died
field_eggs_weighed = eggs weighed
field_weight = weight
field_stored_days = days stored
field_flock_age_weeks = age of the flock
field_look_day = day of the look
field_temperature = temperature
field_hour = time of day
field_humidity = humidity
field_percent = a share, not used
field_year = year
field_ignore = not used
field_dead_in_shell = dead in shell
field_pipped_dead = pipped, died

species_chicken = hens
species_duck = ducks
species_goose = geese
species_turkey = turkeys
species_quail = quails
species_muscovy = Muscovy ducks
species_guinea = guinea fowl
species_pheasant = pheasants
species_bobwhite = bobwhite quails
species_chukar = chukars
species_emu = emus
species_ostrich = ostriches
species_peafowl = peafowl
species_pigeon = pigeons
species_partridge = partridges
species_swan = swans
species_rhea = rheas
species_button_quail = button quails
species_parrot = parrots
species_mulard = mulards
species_mixed = several kinds

sure_sure = sure
sure_likely = likely
sure_open = open

why_words = words
why_adds_up = adds up in { $rows } of { $of ->
        [one] { $of } row
       *[other] { $of } rows
    }
why_values = { $kind ->
        [dates] it holds dates
        [counts] it holds counts
        [names] it holds names
        [texts] it holds words
        [birds] it names birds
        [fates] it tells fates
        [events] it tells events
        [shares] it holds shares
        [weights] it holds weights
        [running] it counts 1, 2, 3
        [empty] it is empty
       *[other] its values
    }
why_place = where it stands
why_order = its place among the looks
why_span = the heading above it
why_answer = you said so
why_told = season.toml says so
why_nothing = nothing speaks for another
