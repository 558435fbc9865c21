# The breakout guide: looks of opened eggs by their drawing, what is seen, what it means, what it points to.

breakout_days = { $one_day ->
        [yes] { EGGS($low) }
       *[no] { EGGS($low) } to { EGGS($high) }
    }

breakout_look_egg_clear = Nothing grew
breakout_see_egg_clear = Yolk whole; a dense white spot of 1-2 mm
breakout_means_egg_clear = Infertile, if opened at the first candling. After weeks of warmth an egg that died in its first two days looks the same: then it is infertile or very early dead, and nobody can tell which
breakout_points_to_egg_clear = flock: cocks, mating, feed

breakout_look_egg_ring = Ring without blood
breakout_see_egg_ring = A pale ring of 3-4 mm with a clearer middle
breakout_means_egg_ring = Fertile, stopped before or soon after setting. To be seen in the first days only: after weeks of warmth it cannot be told from an egg in which nothing grew
breakout_points_to_egg_ring = storage, handling, hot or cold start

breakout_look_egg_blood_ring = Blood ring or threads
breakout_see_egg_blood_ring = Blood vessels or a ring of blood, no eye to be seen
breakout_means_egg_blood_ring = Died in the first days, before the eye can be seen
breakout_points_to_egg_blood_ring = storage, first days' warmth, handling

breakout_look_embryo_eye = Black eye
breakout_see_embryo_eye = Small curled body with a black eye; towards the end toes and fingers can be seen, no feathers
breakout_means_embryo_eye = Died on one of these days
breakout_points_to_embryo_eye = warmth, turning, parents' feed

breakout_look_embryo_bird = Looks like a bird
breakout_see_embryo_bird = Beak and toes formed, skin bare or with feather germs
breakout_means_embryo_bird = Died on one of these days
breakout_points_to_embryo_bird = warmth, germs, parents' feed

breakout_look_embryo_down = First down
breakout_see_embryo_down = Thin down, scales and claws begin; head not yet at the blunt end
breakout_means_embryo_down = Died on one of these days
breakout_points_to_embryo_down = warmth, air, germs

breakout_look_embryo_late = Full down, yolk outside
breakout_see_embryo_late = Feathered all over, yolk sac still outside the belly
breakout_means_embryo_late = Died on one of these days
breakout_points_to_embryo_late = warmth, humidity, air, turning

breakout_look_embryo_yolk_half = Yolk half in
breakout_see_embryo_yolk_half = Fills the egg but the air cell; yolk sac half drawn in
breakout_means_embryo_yolk_half = Died about two days before the hatch
breakout_points_to_embryo_yolk_half = humidity, position, hatching air

breakout_look_embryo_yolk_in = Yolk in, not pipped
breakout_see_embryo_yolk_in = Yolk sac in, beak perhaps through the inner skin into the air cell
breakout_means_embryo_yolk_in = Died about a day before the hatch
breakout_points_to_embryo_yolk_in = position, humidity, air, cold at hatching

breakout_look_embryo_pip = Shell broken
breakout_see_embryo_pip = Hole in the shell, chick dead
breakout_means_embryo_pip = Pipped and died
breakout_points_to_embryo_pip = humidity and air while hatching, lid opened

breakout_look_lie_right = Right: head under the right wing
breakout_see_lie_right = Beak in the blunt end, head under the right wing, pointing at the air cell
breakout_means_lie_right = As it should lie
breakout_points_to_lie_right = nothing

breakout_look_lie_thighs = Head between the thighs
breakout_see_lie_thighs = Head down between the legs
breakout_means_lie_thighs = Lies wrongly (or died before it turned, in the week before the hatch)
breakout_points_to_lie_thighs = warmth late on, or simply an earlier death

breakout_look_lie_small_end = Head in the pointed end
breakout_see_lie_small_end = Head away from the air cell
breakout_means_lie_small_end = Lies wrongly
breakout_points_to_lie_small_end = eggs set small end up, turning

breakout_look_lie_left = Head under the left wing
breakout_see_lie_left = Head in the blunt end but under the left wing
breakout_means_lie_left = Lies wrongly
breakout_points_to_lie_left = warmth, turning, parents' feed

breakout_look_lie_away = Beak away from the air cell
breakout_see_lie_away = Head under the right wing but turned from the air cell
breakout_means_lie_away = Lies wrongly
breakout_points_to_lie_away = turning, egg angle

breakout_look_lie_feet = Feet over the head
breakout_see_lie_feet = One or both feet above the head
breakout_means_lie_feet = Lies wrongly
breakout_points_to_lie_feet = not well known

breakout_look_lie_above = Beak above the wing
breakout_see_lie_above = Head on, not under, the right wing
breakout_means_lie_above = Lies wrongly (many hatch all the same)
breakout_points_to_lie_above = often none

breakout_look_lie_across = Across the egg
breakout_see_lie_across = Lies across, its head at the side of the shell
breakout_means_lie_across = Lies wrongly
breakout_points_to_lie_across = not well known; small embryos

breakout_look_sign_wet = Wet and swollen
breakout_see_sign_wet = Much fluid, small air cell, swollen neck
breakout_means_sign_wet = Lost too little water
breakout_points_to_sign_wet = too damp while set

breakout_look_sign_dry = Dry and stuck
breakout_see_sign_dry = Skin dry and tight, down stuck to the shell, large air cell
breakout_means_sign_dry = Lost too much water, or dry while hatching
breakout_points_to_sign_dry = too dry while set or while hatching

breakout_look_sign_rotten = Foul smell
breakout_see_sign_rotten = Green, black or frothing; it may burst
breakout_means_sign_rotten = Germs in the egg: do not open it, throw it out closed
breakout_points_to_sign_rotten = dirt, washing, cracks
