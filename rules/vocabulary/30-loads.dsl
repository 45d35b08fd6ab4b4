# Sentences about what stands on the floor and what cuts its joists.
[condition][]With the heavy things the load takes more than {figure} of the joists in {kind:bending|shear|bearing}=$use : Fact( name == "{kind} use with items", about == "" ) Figure( name == "{figure}", number < $use.number )
[condition][]With the heavy things the joists sag by more than {figure} of the building limit=$sag : Fact( name == "joist deflection share with items", about == "" ) Figure( name == "{figure}", number < $sag.number )
[condition][]With the heavy things the joists bend more than the tile stands=$joist : Fact( name == "joist ratio with items after", about == "" ) Fact( name == "bending the tile stands", about == "", number > $joist.number )
[condition][]By the joists as measured {figure} is kept with the heavy things=$use : Fact( name == "bending use with items before", about == "" ) Figure( name == "{figure}", number >= $use.number )
[condition][]The finished deck dips more under one spot than {figure} allows=$spot : Fact( name == "deck point ratio after", about == "" ) Figure( name == "{figure}", number > $spot.number )
[condition][]Its mass has been told=Fact( name == "heavy item mass", about == $thing.about, from == "scenario" )
[condition][]A heavy thing stands on the floor=$heavy : Fact( name == "heaviest item" ) Figure( name == "heavy-item-on-timber", number <= $heavy.number )
