# Sentences about levels, water, heat, doors, rooms and choosing between build-ups.

# --- levels
[condition][]A sealer or surface membrane lies beneath it=exists Laid( layer in ( "sulfate-sealer", "surface-dpm" ) )

# --- water
[condition][]The room has a sink or basin but no bath or shower=Fact( name == "use", about == "", text in ( "kitchen", "utility room", "cloakroom" ) )
[condition][]The room has water and often a floor drain=Fact( name == "use", about == "", text in ( "bathroom", "utility room", "light commercial" ) )
[condition][]The room is a bathroom or wet room=Fact( name == "use", about == "", text in ( "bathroom", "wet room" ) )
[condition][]The floor is often wet or soaked=Fact( name == "wetness", about == "", text in ( "often wet", "soaked" ) )

# --- heat
[condition][]The floor is heated=Fact( about == "", says == "heated: yes" )
[condition][]The floor heating runs on electricity=Fact( name == "heating", about == "", text in ( "electric mat", "electric cable" ) )
[condition][]The floor heating runs on warm water=Fact( name == "heating", about == "", text in ( "water pipes in screed", "water pipes in spreader plates", "low-profile overlay" ) )
[condition][]This heating comes with the new floor=Fact( name == "heating", about == "", text in ( "electric mat", "electric cable", "low-profile overlay" ) )
[condition][]Warm water pipes lie in or under the boards=Fact( name == "heating", about == "", text in ( "water pipes in spreader plates", "low-profile overlay" ) )

# --- doors; the door was named by "There is a door named"
[condition][]It has a leaf=not Fact( about == $thing.about, says == "leaf: no leaf" )
[condition][]Its gap was measured=not Unknown( name == "gap under leaf", about == $thing.about )
[condition][]Its leaf opens into the room=Fact( about == $thing.about, says == "opens: into the room" )
[condition][]Its leaf opens away from the floor=Fact( name == "opens", about == $thing.about, text in ( "out of the room", "sliding" ) )
[condition][]Its leaf may be cut=Fact( about == $thing.about, says == "trimming: allowed" )
[condition][]Its trimming, leaf and fire rating have all been told=not Unknown( name == "can be trimmed", about == $thing.about ) not Unknown( name == "leaf", about == $thing.about ) not Unknown( name == "fire door", about == $thing.about )
[condition][]Its leaf is not fully described=not Fact( about == $thing.about, says == "leaf question: settled" )
[condition][]No new leaf may be hung for it=not Fact( about == $thing.about, says == "new leaf: possible" )
[condition][]Its leaf must not be cut=Fact( about == $thing.about, says == "trimming: never" )
[condition][]Its leaf is of solid or panelled timber=Fact( name == "leaf", about == $thing.about, text in ( "solid timber", "panelled timber" ) )
[condition][]Its leaf is hollow, plastic, metal or glass=Fact( name == "leaf", about == $thing.about, text in ( "hollow-core", "plastic", "steel", "aluminium", "glass" ) )
[condition][]Its {name} is said to be {value}=Fact( about == $thing.about, says == "{name}: {value}", from == "scenario" )
[condition][]Its {name} is no more than its {other}=$itsNoMore : Fact( name == "{name}", about == $thing.about ) Fact( name == "{other}", about == $thing.about, number >= $itsNoMore.number )
[condition][]Cut by its most trim its leaf would clear the floor by {figure}=$itsLeft : Fact( name == "gap left", about == $thing.about ) $itsTrim : Fact( name == "most trim", about == $thing.about ) Figure( name == "{figure}", number <= $itsLeft.number + $itsTrim.number )
[condition][]Even cut by its most trim its leaf would not clear the floor by {figure}=$itsLeft : Fact( name == "gap left", about == $thing.about ) $itsTrim : Fact( name == "most trim", about == $thing.about ) Figure( name == "{figure}", number > $itsLeft.number + $itsTrim.number )
[condition][]The new floor would stand above its sill=$itsSill : Fact( name == "sill height", about == $thing.about ) Fact( name == "rise most", about == "", number > $itsSill.number )
[consequence][]Its leaf must then never be cut=conclude( "trimming", $thing.about, "never" )

# --- rooms
[condition][]The room has units, a WC or appliances as a rule=Fact( name == "use", about == "", text in ( "kitchen", "utility room", "cloakroom", "bathroom" ) )
[condition][]The room has built-under appliances as a rule=Fact( name == "use", about == "", text in ( "kitchen", "utility room" ) )
[condition][]Nobody has said that it lies on the ground=not Fact( name == "storey", about == "", text in ( "ground floor", "basement" ) )

# --- choosing
[condition][]There is a choice of build-ups=Fact( name == "build-ups that stand", text not in ( "0", "1" ) )
[condition][]The client asks first for {priority}=Fact( name == "priorities", about == "", text first == "{priority}" )
[condition][]The client asks next for {priority}=Fact( name == "priorities", about == "", text second == "{priority}" )
[condition][]Some leaf must not be cut=exists Fact( says == "can be trimmed: no" )
