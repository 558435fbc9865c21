# Le guide des œufs ouverts : aspects, ce que l’on voit, ce que cela veut dire, ce que cela indique.

breakout_days = { $one_day ->
        [yes] { EGGS($low) }
       *[no] { EGGS($low) } à { EGGS($high) }
    }

breakout_look_egg_clear = Rien n’a poussé
breakout_see_egg_clear = Jaune entier ; une tache blanche dense de 1-2 mm
breakout_means_egg_clear = Non fécondé, s’il est ouvert au premier mirage. Après des semaines de chaleur, un œuf mort dans ses deux premiers jours a le même aspect : il est alors non fécondé ou mort très tôt, et personne ne peut dire lequel
breakout_points_to_egg_clear = troupeau : coqs, accouplement, aliment

breakout_look_egg_ring = Anneau sans sang
breakout_see_egg_ring = Un anneau pâle de 3-4 mm au centre plus clair
breakout_means_egg_ring = Fécondé, arrêté avant la mise ou peu après. À voir les premiers jours seulement : après des semaines de chaleur, on ne le distingue plus d’un œuf où rien n’a poussé
breakout_points_to_egg_ring = conservation, manipulation, départ trop chaud ou trop froid

breakout_look_egg_blood_ring = Anneau ou filets de sang
breakout_see_egg_blood_ring = Des vaisseaux ou un anneau de sang, pas d’œil visible
breakout_means_egg_blood_ring = Mort les premiers jours, avant que l’œil ne se voie
breakout_points_to_egg_blood_ring = conservation, chaleur des premiers jours, manipulation

breakout_look_embryo_eye = Œil noir
breakout_see_embryo_eye = Petit corps recourbé à l’œil noir ; vers la fin on voit doigts et orteils, pas de plumes
breakout_means_embryo_eye = Mort l’un de ces jours
breakout_points_to_embryo_eye = chaleur, retournement, aliment des parents

breakout_look_embryo_bird = Ressemble à un oiseau
breakout_see_embryo_bird = Bec et doigts formés, peau nue ou avec des ébauches de plumes
breakout_means_embryo_bird = Mort l’un de ces jours
breakout_points_to_embryo_bird = chaleur, microbes, aliment des parents

breakout_look_embryo_down = Premier duvet
breakout_see_embryo_down = Duvet fin, écailles et griffes commencent ; la tête n’est pas encore au gros bout
breakout_means_embryo_down = Mort l’un de ces jours
breakout_points_to_embryo_down = chaleur, air, microbes

breakout_look_embryo_late = Plein duvet, jaune dehors
breakout_see_embryo_late = Duvet partout, sac vitellin encore hors du ventre
breakout_means_embryo_late = Mort l’un de ces jours
breakout_points_to_embryo_late = chaleur, humidité, air, retournement

breakout_look_embryo_yolk_half = Jaune à demi rentré
breakout_see_embryo_yolk_half = Remplit l’œuf sauf la chambre à air ; sac vitellin à demi rentré
breakout_means_embryo_yolk_half = Mort environ deux jours avant l’éclosion
breakout_points_to_embryo_yolk_half = humidité, position, air à l’éclosion

breakout_look_embryo_yolk_in = Jaune rentré, non bêché
breakout_see_embryo_yolk_in = Sac vitellin rentré, bec peut-être passé par la membrane interne dans la chambre à air
breakout_means_embryo_yolk_in = Mort environ un jour avant l’éclosion
breakout_points_to_embryo_yolk_in = position, humidité, air, froid à l’éclosion

breakout_look_embryo_pip = Coquille percée
breakout_see_embryo_pip = Trou dans la coquille, poussin mort
breakout_means_embryo_pip = Bêché puis mort
breakout_points_to_embryo_pip = humidité et air à l’éclosion, couvercle ouvert

breakout_look_lie_right = Juste : tête sous l’aile droite
breakout_see_lie_right = Bec au gros bout, tête sous l’aile droite, tournée vers la chambre à air
breakout_means_lie_right = Comme il doit être
breakout_points_to_lie_right = rien

breakout_look_lie_thighs = Tête entre les cuisses
breakout_see_lie_thighs = Tête en bas entre les pattes
breakout_means_lie_thighs = Mal placé (ou mort avant de se tourner, dans la semaine avant l’éclosion)
breakout_points_to_lie_thighs = chaleur vers la fin, ou simplement une mort plus précoce

breakout_look_lie_small_end = Tête au petit bout
breakout_see_lie_small_end = Tête loin de la chambre à air
breakout_means_lie_small_end = Mal placé
breakout_points_to_lie_small_end = œufs mis petit bout en haut, retournement

breakout_look_lie_left = Tête sous l’aile gauche
breakout_see_lie_left = Tête au gros bout mais sous l’aile gauche
breakout_means_lie_left = Mal placé
breakout_points_to_lie_left = chaleur, retournement, aliment des parents

breakout_look_lie_away = Bec loin de la chambre à air
breakout_see_lie_away = Tête sous l’aile droite mais détournée de la chambre à air
breakout_means_lie_away = Mal placé
breakout_points_to_lie_away = retournement, angle de l’œuf

breakout_look_lie_feet = Pattes sur la tête
breakout_see_lie_feet = Une patte ou les deux au-dessus de la tête
breakout_means_lie_feet = Mal placé
breakout_points_to_lie_feet = mal connu

breakout_look_lie_above = Bec sur l’aile
breakout_see_lie_above = Tête sur l’aile droite, non dessous
breakout_means_lie_above = Mal placé (beaucoup éclosent quand même)
breakout_points_to_lie_above = souvent rien

breakout_look_lie_across = En travers de l’œuf
breakout_see_lie_across = Couché en travers, la tête contre le côté de la coquille
breakout_means_lie_across = Mal placé
breakout_points_to_lie_across = mal connu ; petits embryons

breakout_look_sign_wet = Mouillé et gonflé
breakout_see_sign_wet = Beaucoup de liquide, petite chambre à air, nuque gonflée
breakout_means_sign_wet = A perdu trop peu d’eau
breakout_points_to_sign_wet = trop humide pendant la couvaison

breakout_look_sign_dry = Sec et collé
breakout_see_sign_dry = Peau sèche et tendue, duvet collé à la coquille, grande chambre à air
breakout_means_sign_dry = A perdu trop d’eau, ou trop sec à l’éclosion
breakout_points_to_sign_dry = trop sec pendant la couvaison ou à l’éclosion

breakout_look_sign_rotten = Odeur infecte
breakout_see_sign_rotten = Vert, noir ou mousseux ; il peut éclater
breakout_means_sign_rotten = Microbes dans l’œuf : ne l’ouvrez pas, jetez-le fermé
breakout_points_to_sign_rotten = saleté, lavage, fêlures
