# La guía de los huevos abiertos: aspectos, qué se ve, qué significa, a qué apunta.

breakout_days = { $one_day ->
        [yes] { EGGS($low) }
       *[no] { EGGS($low) } a { EGGS($high) }
    }

breakout_look_egg_clear = Nada creció
breakout_see_egg_clear = Yema entera; una mancha blanca densa de 1-2 mm
breakout_means_egg_clear = Infértil, si se abrió en la primera ovoscopia. Tras semanas de calor, un huevo que murió en sus dos primeros días se ve igual: entonces es infértil o murió muy pronto, y nadie puede decir cuál
breakout_points_to_egg_clear = aves: gallos, apareamiento, pienso

breakout_look_egg_ring = Anillo sin sangre
breakout_see_egg_ring = Un anillo pálido de 3-4 mm con el centro más claro
breakout_means_egg_ring = Fértil, se detuvo antes de incubar o poco después. Se ve solo los primeros días: tras semanas de calor no se distingue de un huevo en el que nada creció
breakout_points_to_egg_ring = almacenamiento, manejo, comienzo caliente o frío

breakout_look_egg_blood_ring = Anillo o hilos de sangre
breakout_see_egg_blood_ring = Vasos o un anillo de sangre, sin ojo a la vista
breakout_means_egg_blood_ring = Murió los primeros días, antes de que se vea el ojo
breakout_points_to_egg_blood_ring = almacenamiento, calor de los primeros días, manejo

breakout_look_embryo_eye = Ojo negro
breakout_see_embryo_eye = Cuerpo pequeño y curvado con un ojo negro; hacia el final se ven los dedos, sin plumas
breakout_means_embryo_eye = Murió uno de estos días
breakout_points_to_embryo_eye = calor, volteo, pienso de los padres

breakout_look_embryo_bird = Parece un ave
breakout_see_embryo_bird = Pico y dedos formados, piel desnuda o con brotes de plumas
breakout_means_embryo_bird = Murió uno de estos días
breakout_points_to_embryo_bird = calor, gérmenes, pienso de los padres

breakout_look_embryo_down = Primer plumón
breakout_see_embryo_down = Plumón fino, empiezan escamas y uñas; la cabeza aún no está en el polo grueso
breakout_means_embryo_down = Murió uno de estos días
breakout_points_to_embryo_down = calor, aire, gérmenes

breakout_look_embryo_late = Todo plumón, yema fuera
breakout_see_embryo_late = Plumón por todo el cuerpo, saco vitelino aún fuera del vientre
breakout_means_embryo_late = Murió uno de estos días
breakout_points_to_embryo_late = calor, humedad, aire, volteo

breakout_look_embryo_yolk_half = Yema a medio entrar
breakout_see_embryo_yolk_half = Llena el huevo menos la cámara de aire; saco vitelino a medio entrar
breakout_means_embryo_yolk_half = Murió unos dos días antes del nacimiento
breakout_points_to_embryo_yolk_half = humedad, posición, aire al nacer

breakout_look_embryo_yolk_in = Yema dentro, sin picar
breakout_see_embryo_yolk_in = Saco vitelino dentro, pico quizá a través de la membrana interna en la cámara de aire
breakout_means_embryo_yolk_in = Murió alrededor de un día antes del nacimiento
breakout_points_to_embryo_yolk_in = posición, humedad, aire, frío al nacer

breakout_look_embryo_pip = Cáscara rota
breakout_see_embryo_pip = Agujero en la cáscara, pollito muerto
breakout_means_embryo_pip = Picó y murió
breakout_points_to_embryo_pip = humedad y aire al nacer, tapa abierta

breakout_look_lie_right = Bien: cabeza bajo el ala derecha
breakout_see_lie_right = Pico en el polo grueso, cabeza bajo el ala derecha, hacia la cámara de aire
breakout_means_lie_right = Como debe estar
breakout_points_to_lie_right = nada

breakout_look_lie_thighs = Cabeza entre los muslos
breakout_see_lie_thighs = Cabeza abajo entre las patas
breakout_means_lie_thighs = Mal colocado (o murió antes de girarse, en la semana antes del nacimiento)
breakout_points_to_lie_thighs = calor al final, o simplemente una muerte anterior

breakout_look_lie_small_end = Cabeza en el polo agudo
breakout_see_lie_small_end = Cabeza lejos de la cámara de aire
breakout_means_lie_small_end = Mal colocado
breakout_points_to_lie_small_end = huevos puestos con la punta arriba, volteo

breakout_look_lie_left = Cabeza bajo el ala izquierda
breakout_see_lie_left = Cabeza en el polo grueso pero bajo el ala izquierda
breakout_means_lie_left = Mal colocado
breakout_points_to_lie_left = calor, volteo, pienso de los padres

breakout_look_lie_away = Pico lejos de la cámara de aire
breakout_see_lie_away = Cabeza bajo el ala derecha pero de espaldas a la cámara de aire
breakout_means_lie_away = Mal colocado
breakout_points_to_lie_away = volteo, ángulo del huevo

breakout_look_lie_feet = Patas sobre la cabeza
breakout_see_lie_feet = Una pata o las dos por encima de la cabeza
breakout_means_lie_feet = Mal colocado
breakout_points_to_lie_feet = no se sabe bien

breakout_look_lie_above = Pico sobre el ala
breakout_see_lie_above = Cabeza encima del ala derecha, no debajo
breakout_means_lie_above = Mal colocado (muchos nacen igual)
breakout_points_to_lie_above = a menudo nada

breakout_look_lie_across = Atravesado en el huevo
breakout_see_lie_across = Atravesado, la cabeza al lado de la cáscara
breakout_means_lie_across = Mal colocado
breakout_points_to_lie_across = no se sabe bien; embriones pequeños

breakout_look_sign_wet = Mojado e hinchado
breakout_see_sign_wet = Mucho líquido, cámara de aire pequeña, nuca hinchada
breakout_means_sign_wet = Perdió muy poca agua
breakout_points_to_sign_wet = demasiada humedad durante la incubación

breakout_look_sign_dry = Seco y pegado
breakout_see_sign_dry = Piel seca y tirante, plumón pegado a la cáscara, cámara de aire grande
breakout_means_sign_dry = Perdió demasiada agua, o estuvo seco al nacer
breakout_points_to_sign_dry = demasiado seco durante la incubación o al nacer

breakout_look_sign_rotten = Mal olor
breakout_see_sign_rotten = Verde, negro o espumoso; puede reventar
breakout_means_sign_rotten = Gérmenes en el huevo: no lo abra, tírelo cerrado
breakout_points_to_sign_rotten = suciedad, lavado, grietas
