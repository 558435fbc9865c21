# Pertes et température : le verdict et ses raisons, pour qui veut aller plus loin.


## The verdict

relate_clear_sign = Signe net.
relate_some_sign = Quelque signe.
relate_no_sign = Aucun signe, et un doublement se serait vu.
relate_cannot_tell = On ne peut pas le dire : un doublement aurait échappé { $missed } fois sur 10.
relate_not_apart = Impossible à distinguer de ceci : { WORD($factor, kind: "factor") }.
relate_why_no_window = On ne peut pas le dire : d’aucune période on ne connaît à la fois les œufs, les morts et la durée.
relate_why_not_logged = On ne peut pas le dire : aucune période d’aucune couvée n’a été enregistrée.
relate_why_one_batch = On ne peut pas le dire : une seule couvée a un enregistrement, et rien à quoi la comparer.
relate_why_no_death = On ne peut pas le dire : aucun embryon n’est mort dans une période enregistrée.
relate_why_all_died = On ne peut pas le dire : tous les embryons sont morts, touchés ou non.
relate_why_no_excursion = On ne peut pas le dire : aucun coup de chaud ou de froid qui compte n’a touché une couvée.
relate_why_same_dose = On ne peut pas le dire : toutes les couvées ont reçu la même dose.
relate_why_uncounted = On ne peut pas le dire : { $windows ->
        [1] la seule période avec un épisode est inutilisable
       *[other] les { $windows } périodes avec un épisode sont inutilisables
    }, car { $not_counted ->
        [yes] vivants ou morts n’ont pas été comptés
       *[no] les nombres se contredisent
    } ({ LIST($batches) }).

## Its size and how sure it is

relate_size = Dans { $exposed ->
        [1] la couvée touchée
       *[other] les { $exposed } couvées touchées
    } sur { $batches }, les embryons sont morts à { $hazard_ratio ->
        [none] un nombre inconnu de
        [21] plus de 20
       *[ratio] { PLAIN($hazard_ratio) }
    } fois le taux des autres (intervalle à 95 % de { $low ->
        [none] inconnu
        [21] plus de 20
       *[ratio] { PLAIN($low) }
    } à { $high ->
        [none] inconnu
        [21] plus de 20
       *[ratio] { PLAIN($high) }
    }), à la dose habituelle des périodes touchées.
relate_winner = Dans des relevés si petits seule une grande différence se voit ; la vraie est donc sans doute plus petite : fiez-vous à la moitié basse de l’intervalle.
relate_no_arrangement = Il n’existe pas d’autre façon de répartir les épisodes sur ces couvées ; on ne peut donc pas peser le hasard.
relate_chance = En { $turned ->
        [yes] décalant l’enregistrement par rapport aux couvées
       *[no] tirant au sort les épisodes entre les couvées
    }, le hasard seul en fait autant dans { $many ->
        [0] moins de 1
       *[other] { $many }
    } cas sur { PLAIN($out_of) }.
relate_smallest = Si peu de couvées n’auraient pas pu donner moins de { $many ->
        [0] 1
       *[other] { $many }
    } sur { PLAIN($out_of) }.
relate_drawn = En tirant chaque couvée de nouveau, avec sa propre chance, couveuses et saisons à leur niveau, il le fait dans { $many ->
        [0] moins de 1
       *[other] { $many }
    } cas sur { PLAIN($out_of) }.
relate_less_than_clear = C’est moins que la règle ne demande pour un signe net.
relate_harm_not_size = Qu’il y ait un dommage est un signe net ; combien, non : l’intervalle descend jusqu’à aucun.
relate_would_show = Un taux { $ratio ->
        [none] inconnu
        [21] plus de 20
       *[ratio] { PLAIN($ratio) }
    } fois plus haut se serait vu dans 8 de 10 saisons pareilles.
relate_shows_from = { $ratio ->
        [none] On ne peut pas compter sur des relevés de cette taille pour montrer même un très grand dommage
       *[ratio] Des relevés de cette taille ne montrent un dommage dans 8 saisons sur 10 que là où le taux est environ { $ratio ->
            [21] plus de 20
           *[other] { PLAIN($ratio) }
        } fois plus haut
    }{ $why ->
        [levels] , car les couvées touchées et les autres sont dans des couveuses ou des années différentes
        [few_exposed] , car si peu de couvées ont été touchées
        [few_deaths] , car si peu d’embryons sont morts
        [few_batches] , car il y a si peu de couvées
       *[none] { "" }
    }.
relate_excess = Les périodes touchées ont eu { EGGS($observed) } morts ; sans épisode elles en auraient eu sans doute { EGGS($expected) } : { EGGS($excess) } de plus (intervalle à 95 % de { EGGS($excess_low) } à { EGGS($excess_high) } ; au-dessous de zéro veut dire moins), soit environ { EGGS($chicks_lost) } poussins perdus à la fin ({ EGGS($chicks_low) } à { EGGS($chicks_high) }).

## What went with it

relate_one_sided = Toutes les couvées touchées ont ceci en commun, et aucune autre : { WORD($factor, kind: "factor") } ({ LIST($hit) }). Cela compare ceci, et ne peut pas dire ce que la température a fait.
relate_nearly = Presque toutes les couvées de ceux-ci ont été touchées et les autres non : { WORD($factor, kind: "factor") } ({ LIST($hit) }) ; trop peu peuvent se comparer au dedans.
relate_exact = Les couvées touchées sont toutes du même côté ({ WORDS($hit, kind: "side") }) pour ceci : { WORD($factor, kind: "factor") }. Ce qui a changé avec cela ne peut pas être séparé de la température.
relate_together = Ceci va de pair avec les épisodes ({ WHOLE($explained) } en commun) : { WORD($factor, kind: "factor") } ; une part d’une différence peut en venir.
relate_in_part = Ceci va en partie de pair avec les épisodes ({ WHOLE($explained) } en commun) : { WORD($factor, kind: "factor") } ; une part d’une différence peut en venir.
side_more = plus tard, plus ou plus vieux
side_fewer = plus tôt, moins ou plus jeune
factor_incubator = la couveuse
factor_species = l’espèce
factor_flock = le lot de reproducteurs
factor_season = la saison
factor_keeper = l’éleveur
factor_stored_days = jours de garde
factor_flock_age_weeks = âge du lot
factor_start = moment de la saison
relate_allowed = Il est tenu compte de ceci : { WORDS($factors, kind: "factor") }.
relate_not_allowed = Trop peu de relevés pour tenir compte de ceci : { WORDS($factors, kind: "factor") }.
relate_left_out = { $windows ->
        [1] Une période est laissée
       *[other] { $windows } périodes sont laissées
    } de côté : { $why ->
        [not_counted] les vivants ou les morts n’y ont pas été comptés.
        [twice] la même période s’y trouve deux fois.
        [no_length] sa durée n’est pas connue.
        [too_many_dead] plus de morts que de vivants au début.
       *[no_eggs] aucun œuf vivant au début.
    }

## The question as it was asked, and its limits

relate_asked = Demandé avant de regarder : les périodes entre deux mirages où les œufs ont eu trop chaud ou trop froid ont-elles perdu plus d’embryons que les autres ?
relate_one_exposed = Une seule couvée a été touchée, il n’existe donc pas de test de l’épisode ; regardez cette couvée pour elle-même et comparez-la aux autres.
relate_few_batches = Avec { $batches ->
        [1] une couvée
       *[other] { $batches } couvées
    }, c’est une description, pas un test.
relate_few_deaths = Avec { EGGS($deaths) ->
        [1] une mort
       *[other] { EGGS($deaths) } morts
    }, c’est une description, pas un test.
relate_unlogged = Pour { $unknown } périodes sur { $windows }, trop peu est enregistré pour connaître la dose : comptées ni comme touchées ni comme épargnées.
relate_after = Regardé à côté de la question : { EGGS($died) } embryons sont morts dans la période juste après un épisode ({ LIST($where) }{ $others ->
        [0] { "" }
       *[other] , et { $others } autres
    }), là où des couvées sans épisode en perdraient { TENTH($expected) } ; autant ou plus viennent par hasard dans { $many ->
        [0] moins de 1
       *[other] { $many }
    } cas sur { PLAIN($out_of) }. Des embryons tués peu avant un mirage peuvent y passer pour vivants et n’être trouvés qu’au suivant. La question posée les compte comme des pertes sans épisode et peut manquer un tel dommage ; le verdict reste à la question posée.
relate_after_one = { EGGS($died) } sur { EGGS($at_risk) } dans { $batch }
relate_later = Regardé à côté de la question : les couvées touchées dans la période d’avant ce moment ont perdu plus de là à la fin, mais pas dans cette seule période : { WORDS($looks, kind: "stage") }. Des morts peuvent suivre tard un épisode.
relate_not_the_cause = Des pertes qui vont avec un épisode s’accordent avec un dommage de celui-ci. Qu’il en soit la cause, et non quelque chose venu avec lui, des relevés de ce genre ne peuvent pas le prouver.
