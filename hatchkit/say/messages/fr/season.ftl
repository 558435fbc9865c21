# La page de la saison : ses questions dans l’ordre où on les lit, et ce que répondent les relevés.

page_season_title = { $name } : bilan de la saison
page_season_file = { $name }-bilan
page_season_counts = { $batches ->
        [0] Aucune couvée n’a pu être utilisée.
       *[other] { EGGS($set) ->
            [1] Un œuf
           *[other] { EGGS($set) } œufs
        } mis en couveuse en { $batches ->
            [1] une couvée
           *[other] { $batches } couvées
        } ({ LIST($birds) }){ $first ->
            [none] { "" }
           *[day] , { $days ->
                [1] { DAY($first) }
               *[other] { DAY($first) } au { DAY($last) }
            }
        } : { EGGS($hatched) ->
            [one] { EGGS($hatched) } poussin sain
           *[other] { EGGS($hatched) } poussins sains
        }, { $share_of_set ->
            [none] part inconnue.
           *[share] { SHARE($share_of_set) } des œufs mis{ $share_of_developing ->
                [none] .
               *[share] , { SHARE($share_of_developing) } des œufs non clairs.
            }
        }
    }
species_of = { WORD($key, kind: "species") }

## Qu’est-ce qui a coûté le plus ?

ask_most = Qu’est-ce qui a coûté le plus ?
most_cause = Le plus coûteux : { WORD($key, kind: "cause") }. Environ { EGGS($eggs) } des { EGGS($lost) } œufs perdus ({ LIST($batches, most: 5) }).
most_cause_even = Environ { EGGS($eggs) } des { EGGS($lost) } œufs perdus chacune : { WORD($key, kind: "cause") } et { $second }.
most_cause_shared = Aucune cause n’est seule en tête : { LIST($tied) } pèsent à peu près autant dans { $batch }. À la première reviennent environ { EGGS($eggs) } des { EGGS($lost) } œufs perdus.
cause_alone = { WORD($key, kind: "cause") }
most_stage = Plus de pertes que publié, sans cause qui ressorte : { WORD($key, kind: "loss") }, environ { EGGS($eggs) } des { EGGS($lost) } œufs perdus.
most_records = { EGGS($eggs) ->
        [1] Un œuf a
       *[other] { EGGS($eggs) } œufs ont
    } un sort inconnu ({ LIST($batches, most: 5) }) : personne ne peut dire ce qui a coûté le plus avant que ce soit noté.
most_rest = Puis : { LIST($rest) }.
most_short_cause = { WORD($key, kind: "cause") } : { EGGS($eggs) } ({ LIST($batches, most: 4) })
most_short_stage = { WORD($key, kind: "loss") } au-delà du niveau publié : { EGGS($eggs) }
most_short_records = œufs au sort inconnu : { EGGS($eggs) }
most_none_finished = Ce que les œufs sont devenus n’est pas noté ; on ne peut donc pas dire ce qui a coûté le plus.
most_none_finished_sure = On ne peut rien juger avant qu’une éclosion soit notée.
most_nothing = Aucune cause et aucun stade n’a coûté assez d’œufs pour être mis en tête : { $number ->
        [1] une couvée
       *[other] { $number } couvées
    }, rien d’anormal.
most_nothing_sure = La simple malchance suffit à l’expliquer ; un petit dommage pourrait se cacher dans si peu d’œufs.
most_unusual = Aucune cause et aucun stade ne peut être mis en tête, mais tout n’est pas malchance : { LIST($batches) } a perdu à un stade plus que la malchance ne donne souvent.
most_unusual_sure = Il est sûr que c’est rare ; ce que c’était, les relevés ne le disent pas.
most_poor = Aucune cause et aucun stade ne peut être mis en tête, bien que l’éclosion ait été nettement sous l’habituel : { LIST($batches, most: 5) }.
most_poor_sure = Le nombre est sûr ; ce que c’était, les relevés ne le disent pas.
most_sure_cause_firm = Assez sûr dans { $batch } ({ SHARE($share) } du poids parmi toutes les causes). Les relevés indiquent ; ils ne prouvent pas.
most_sure_cause_probable = Probable dans { $batch } ({ SHARE($share) } du poids parmi toutes les causes), pas sûr.
most_sure_cause_guess = Une supposition parmi d’autres : { SHARE($share) } du poids dans { $batch }.
most_sure_stage_counted = Le nombre est sûr. La cause n’est pas connue, et le niveau publié vaut pour les poules et reste grossier.
most_sure_stage_assumed = Beaucoup sont morts entre deux mirages, le stade est donc en partie supposé ; la cause n’est pas connue.
most_sure_records_counted = Le nombre est sûr : s’ils étaient clairs, morts ou cassés, personne ne le sait.

eggs_of_cause = { WORD($key, kind: "cause") } ({ EGGS($eggs) })

## Où sont passés les œufs ?

ask_lost = Où sont passés les œufs ?
lost_most = { EGGS($lost) ->
        [0] Aucun œuf n’a été perdu.
        [1] Un œuf sur { EGGS($set) } n’a pas donné de poussin sain.
       *[other] { EGGS($lost) } œufs sur { EGGS($set) } n’ont pas donné de poussin sain. Le plus souvent : { LIST($most) }.
    }
lost_clear = Clair veut dire non fécondé, ou mort trop tôt pour être vu : seul un œuf ouvert le dit.
lost_method = Le jour 0 est l’heure de la mise. La parenthèse est l’intervalle à 95 %, où se trouve sans doute le vrai taux ; pour toute une saison il tient compte des différences entre couvées. De { EGGS($dead) } embryons morts, { EGGS($shared) } sont morts entre deux mirages de part et d’autre d’une limite ; ils sont répartis selon les âges de mort de la saison. Les fractions d’œufs sont arrondies de façon à garder la somme.
table_stages = Œufs selon le stade où ils ont été perdus
table_looks = Les mêmes morts selon le mirage où elles ont été trouvées
table_by_flock = Par lot de reproducteurs
table_by_incubator = Par couveuse

## Quelles couvées étaient mauvaises ?

ask_poor = Quelles couvées étaient mauvaises ?
poor_batches = { $number ->
        [1] Une couvée sur { $of } a éclos
       *[other] { $number } couvées sur { $of } ont éclos
    } nettement moins bien que d’habitude ici : { LIST($poor) }.
poor_none = Aucune des { $of } couvées n’a éclos nettement moins bien que d’habitude ici.
poor_one = { $batch } ({ EGGS($hatched) } sur { EGGS($set) }{ $poor ->
        [clears] , à cause des clairs
        [removed] , à cause des œufs retirés
       *[embryos] { "" }
    })
poor_method = Chaque couvée est placée à côté de vos autres couvées de la même espèce, rapprochée d’un bilan publié, en tenant compte des différences entre couvées : une fois sur les œufs mis, une fois sur les œufs ni clairs ni retirés. Est mauvaise celle qui est d’un écart type ou plus au-dessous dans l’un des deux.
table_batches = Poussins sains par couvée
poor_embryos = oui, par des embryons morts
poor_clears = oui, par des clairs
poor_removed = oui, par des œufs retirés
poor_unknown = inconnu, des œufs au sort inconnu
poor_no = non

## Est-ce plus que de la malchance ?

ask_luck = Est-ce plus que de la malchance ?
luck_unusual = Oui : { LIST($unusual) }. La malchance en donne autant environ une fois sur { $one_in } couvées.
luck_by_published = { $comparisons ->
        [0] Par rapport aux niveaux publiés, oui
       *[other] Par rapport à vos couvées, non ({ $comparisons } comparaisons) ; aux niveaux publiés, oui
    } : dans { LIST($published, most: 5) }, plus d’œufs ont été perdus à un stade que la malchance n’en donne souvent.
luck_one = { $batch } : { $eggs } { WORD($stage, kind: "loss") } sur { EGGS($out_of) }, où l’on en attend de { EGGS($low) } à { EGGS($high) }
luck_none = Rien ne le montre : en { $comparisons } comparaisons aucune couvée n’a perdu à un stade plus que la malchance ne peut donner.
luck_few = On ne peut pas le dire : aucune deuxième couvée de la même espèce n’a été comptée de même.
luck_refused = { $why }
luck_method = Chaque couvée et chaque stade est comparé à vos autres couvées de l’espèce, avec leurs différences, et à des niveaux publiés. Tant de comparaisons montrent forcément quelque chose de rare ; il en est tenu compte (Benjamini-Hochberg).
table_rare = Les plus rares de ces comparaisons, chacune pour elle-même

## Non fécondé, ou mort tôt ?

ask_clears = Non fécondé, ou mort tôt ?
clears_none = Aucun œuf n’était clair.
clears_not_counted = On ne peut pas le dire : les clairs n’ont pas été comptés.
clears_unopened = On ne peut pas le dire : aucun des { EGGS($clear) } clairs n’a été ouvert.{ $flocks ->
        [1] { "" }
       *[other] { " " }La plupart viennent du lot { $flock } : { EGGS($worst_clear) } sur { EGGS($worst_set) } œufs.
    }
clears_opened = { EGGS($dead) ->
        [0] Aucun
       *[other] { EGGS($dead) }
    } des { EGGS($opened) } clairs ouverts contenait un embryon mort ; { EGGS($clear) } œufs sur { EGGS($set) } étaient clairs{ EGGS($barren) ->
        [0] { "" }
        [one] , plus 1 non fécondé à l’ouverture
       *[other] , plus { EGGS($barren) } non fécondés à l’ouverture
    }.{ $flocks ->
        [1] { "" }
       *[other] { " " }La plupart viennent du lot { $flock } : { EGGS($worst_clear) } sur { EGGS($worst_set) } œufs{ EGGS($worst_opened) ->
        [0] , aucun ouvert
       *[other] { "" }
    }.
    }
clears_method = Là où aucun clair n’a été ouvert, la fécondité se trouve quelque part entre « tous étaient non fécondés » et « tous étaient morts tôt » ; le tableau donne cette plage. La fécondité au mirage n’est pas la fécondité.
table_clears = Les clairs, et ce qu’ils disent de la fécondité

## Quand sont-ils morts ?

ask_ages = Quand les embryons sont-ils morts ?
ages_stages = { $most ->
        [early] La plupart sont morts tôt
        [mid] La plupart sont morts au milieu
       *[late] La plupart sont morts tard
    } : { EGGS($early) } tôt, { EGGS($mid) } au milieu, { EGGS($late) } tard ; pour { EGGS($seen) } sur { EGGS($dead) } on a vu qu’ils appartiennent à ce stade.
caption_species = { WORD($species, kind: "species") }

## La place sur le plateau a-t-elle compté ?

ask_place = La place sur le plateau a-t-elle compté ?
place_not_kept = On ne peut pas le dire : la place des œufs sur le plateau n’a pas été notée.
place_few = On ne peut pas le dire : trop peu d’œufs dont la place est connue sont morts.
place_no_sign = Aucun signe : { EGGS($deaths) } morts parmi { EGGS($eggs) } œufs se répartissent au hasard.
place_pattern = { $where ->
        [together] Peut-être : les morts sont groupés
        [edge] Peut-être : les morts sont au bord
       *[middle] Peut-être : les morts sont au milieu
    } plus que le hasard ne le voudrait (environ 1 fois sur { $one_in }) ; ceux d’une même poule le sont souvent aussi.

## Cela a-t-il empiré au fil de la saison ?

ask_course = Cela a-t-il empiré au fil de la saison ?
course_refused = { $why }
course_unknown = On ne peut pas le dire : trop peu de couvées ({ WORD($species, kind: "species") }).
course_none = Impossible à distinguer du hasard : les morts tardives ({ WORD($species, kind: "species") }) de { $batches } couvées ne montent ni ne baissent{ COUNT($outside) ->
        [0] .
       [1] ; { LIST($outside) } ressort.
       *[other] ; { LIST($outside) } ressortent.
    }
course_rise = Les morts tardives ({ WORD($species, kind: "species") }) augmentent au fil de { $batches } couvées, plus que le hasard ne donne souvent.
course_fall = Les morts tardives ({ WORD($species, kind: "species") }) diminuent au fil de { $batches } couvées, plus que le hasard ne donne souvent.

## Les coups de chaud et de froid ont-ils coûté des embryons ?

ask_harm = Les coups de chaud et de froid ont-ils coûté des embryons ?
harm_clear = Un signe net : environ { EGGS($chicks_lost) } poussins ({ EGGS($chicks_low) } à { EGGS($chicks_high) }) ont été perdus dans les { EGGS($exposed) } couvées touchées, sur { $batches }.
harm_some = Quelque signe : environ { EGGS($chicks_lost) } poussins ({ EGGS($chicks_low) } à { EGGS($chicks_high) }) ont été perdus dans les { EGGS($exposed) } couvées touchées, sur { $batches }.
harm_clear_uncounted = Un signe net : les { EGGS($exposed) } couvées touchées, sur { $batches }, ont perdu plus d’embryons que les autres.
harm_some_uncounted = Quelque signe : les { EGGS($exposed) } couvées touchées, sur { $batches }, ont perdu plus d’embryons que les autres.
harm_none = Aucun signe, et deux fois plus de morts se serait vu.
harm_cannot_tell = Ces relevés ne permettent pas de le dire.
harm_not_logged = On ne peut pas le dire : aucune température n’a été enregistrée pendant que les œufs étaient dedans.
harm_log_it = Placez un thermomètre enregistreur à hauteur des œufs.
harm_not_proof = Que l’épisode soit la cause, des relevés de ce genre ne peuvent pas le prouver.
table_exposed = Périodes entre deux mirages où les œufs ont eu trop chaud ou trop froid, ou trop peu enregistrées pour le savoir

## Qu’a fait la température ?

ask_spells = Qu’a fait la température ?
spells_found = { $told ->
        [1] Un épisode mérite
       *[other] { $told } épisodes méritent
    } d’être lu : { LIST($spells) }. { $everyday ->
        [0] Rien d’autre n’est sorti de sa plage.
        [1] Un autre est ordinaire (couvercle ouvert, mise des œufs).
       *[other] { $everyday } autres sont ordinaires (couvercle ouvert, mise des œufs).
    }
spells_none = Rien d’anormal : { $everyday ->
        [0] la température est restée dans sa plage.
        [1] une ouverture ordinaire.
       *[other] { $everyday } ouvertures ordinaires.
    }
spell = { $batch } { EGGS($hours) } h à { DEGREES($extreme_c) }
table_spells = Les épisodes à lire ; la sonde mesure l’air, l’œuf est estimé

## Peut-on croire les thermomètres ?

ask_probes = Peut-on croire les thermomètres ?
probes_off = Pas sûrement : d’après les heures d’éclosion { LIST($probes) }.
probe_off = la sonde de { $incubator } indique environ { STEP($off) } de trop { $way ->
        [high] haut : les œufs étaient plus froids que l’enregistrement ne le dit
       *[low] bas : les œufs étaient plus chauds que l’enregistrement ne le dit
    }
probes_unchecked = Inconnu : { $unchecked ->
        [1] une sonde n’a
       *[other] { $unchecked } sondes n’ont
    } jamais été vérifiées. Lisez-les dans la glace fondante, ou à côté d’un thermomètre médical.
probes_checked = Chaque sonde a été vérifiée, et son écart est pris en compte.
table_machines = Les couveuses les jours ordinaires

## L’éclosion est-elle venue tôt ou tard ?

ask_clock = Tôt ou tard ?
clock_untimed = On ne peut pas le dire : aucune éclosion n’a ses heures notées.
clock_on_time = À l’heure : les { $timed } éclosions sont dans ce qu’une telle prévision peut dire.
clock_off = { $on_time } éclosions sur { $timed } sont venues à l’heure{ COUNT($early) ->
        [0] { "" }
       *[other] ; tôt : { LIST($early) }
    }{ COUNT($late) ->
        [0] { "" }
       *[other] ; tard : { LIST($late) }
    } (jusqu’à { EGGS($hours) } h).

## Les œufs ont-ils perdu ce qu’il faut d’eau ?

ask_water = La perte d’eau était-elle juste ?
water_not_weighed = On ne peut pas le dire : aucun œuf n’a été pesé.
water_on_target = { $weighed } couvées sur { $batches } ont été pesées : { $on_target } dans le but{ $unsure ->
        [0] .
       *[other] , { $unsure } trop incertaines pour juger.
    }
water_off = { $weighed } couvées sur { $batches } ont été pesées : { $on_target } dans le but{ COUNT($little) ->
        [0] { "" }
       *[other] ; trop peu perdu : { LIST($little) }
    }{ COUNT($much) ->
        [0] { "" }
       *[other] ; trop perdu : { LIST($much) }
    }.
table_water = Eau perdue jusqu’au transfert, en part du poids à la mise

## Qu’est-ce qui a été perdu, et à cause de quoi ?

ask_causes = Qu’a-t-on perdu, et à quoi ?
causes_account = Sur { EGGS($lost) } œufs perdus, { EGGS($usual) } sont la perte habituelle, { EGGS($not_explained) } ne sont pas expliqués{ COUNT($causes) ->
        [0] , et aucune cause ne peut être nommée.
       *[other] ; le reste : { LIST($causes) }.
    }
causes_method = Chaque œuf compte une fois. Une cause reçoit les œufs au-delà de l’habituel qui lui correspondent, fois son poids dans la couvée ; les poids de moins d’un dixième sont laissés de côté.
table_account = Le compte de la saison : chaque œuf qui n’a pas donné de poussin sain
cause_usual = ce que les couvées perdent d’habitude
cause_not_explained = non expliqué
cause_unaccounted = œufs au sort inconnu

## Ce que l’on ne sait pas

season_unknown_cause = Une cause : ceci montre ce qui va ensemble. Une preuve demande un même lot dans deux couveuses.
season_unknown_clear = Non fécondé ou mort très tôt, sans ouvrir les clairs.
season_unknown_day = Le jour d’une mort, mieux qu’à deux mirages près.
season_unknown_probe = Si une sonde dit vrai, sauf vérifiée dans la glace fondante et près de { DEGREES($right) }.
season_unknown_illness = Les heures non enregistrées, et les maladies : voyez un vétérinaire.

## Titres des tableaux

head_stage = Stade ou mirage
head_eggs = Œufs
head_set = Œufs mis
head_share_of_set = Des œufs mis
head_share_of_fertile = Des non clairs
head_share_of_transferred = Des œufs transférés
head_batch = Couvée
head_flock = Lot
head_incubator = Couveuse
head_poor = Mauvaise ?
head_out_of = Sur
head_low = Attendu de
head_high = à
head_one_in = Par malchance 1 sur
head_clear = Clairs
head_opened = Ouverts
head_opened_dead = Avec un embryon mort
head_share_fertile = Fécondés
head_event = Numéro
head_day_start = Du jour
head_day_end = Au jour
head_hours = Heures
head_extreme_c = Air au pire
head_egg_extreme_c = Œuf au pire
head_looks_like = Ressemble
head_at_risk = Vivants au début
head_died = Morts
head_hours_warm = Heures trop chaudes
head_hours_cold = Heures trop froides
head_egg_peak_c = Œuf le plus chaud
head_egg_min_c = Œuf le plus froid
head_share_logged = Enregistré
head_mean_c = Moyenne
head_set_point_c = Consigne
head_rh_mean_pct = Humidité, %
head_share_lost = Perdu jusqu’au transfert
head_share_target = Voulu de
head_share_target_high = à
head_key = Perdu à cause de
head_batches = Couvées
