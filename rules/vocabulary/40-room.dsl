# Sentences about levels, water, heat, doors, rooms and choosing between build-ups.

# --- levels
[condition][]A sealer or surface membrane lies beneath it=exists Laid( layer in ( "sulfate-sealer", "surface-dpm" ) )
[condition][]A layer is laid=$thing : Fact( name == "material" )
[consequence][]Say of that layer that {wording}=say( $thing.about, "{wording}" )
[condition][]The room has a shower=Fact( name == "shower", about == "", text != "none" )
[condition][]The floor is often wet or soaked=Fact( name == "wetness", about == "", text in ( "often wet", "soaked" ) )

# --- heat
[condition][]The floor is heated=Fact( about == "", says == "heated: yes" )

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
[condition][]Its {name} is said to be {value}=Fact( about == $thing.about, says == "{name}: {value}", from == "scenario" )
[condition][]Its {name} is no more than its {other}=$itsNoMore : Fact( name == "{name}", about == $thing.about ) Fact( name == "{other}", about == $thing.about, number >= $itsNoMore.number )
[condition][]Cut by its most trim its leaf would clear the floor by its {other}=$itsLeft : Fact( name == "gap left", about == $thing.about ) $itsTrim : Fact( name == "most trim", about == $thing.about ) Fact( name == "{other}", about == $thing.about, number <= $itsLeft.number + $itsTrim.number )
[condition][]Even cut by its most trim its leaf would not clear the floor by its {other}=$itsLeft : Fact( name == "gap left", about == $thing.about ) $itsTrim : Fact( name == "most trim", about == $thing.about ) Fact( name == "{other}", about == $thing.about, number > $itsLeft.number + $itsTrim.number )
[condition][]The new floor would stand above its sill=$itsSill : Fact( name == "sill height", about == $thing.about ) Fact( name == "rise most", about == "", number > $itsSill.number )
[consequence][]Its leaf must then never be cut=conclude( "trimming", $thing.about, "never" )

# --- rooms
[condition][]Nobody has said that it lies on the ground=not Fact( name == "storey", about == "", text in ( "ground floor", "basement" ) )

# --- choosing
[condition][]There is a choice of build-ups=Fact( name == "build-ups that stand", text not in ( "0", "1" ) )
[condition][]The client asks first for {priority}=Fact( name == "priorities", about == "", text first == "{priority}" )
[condition][]The client asks next for {priority}=Fact( name == "priorities", about == "", text second == "{priority}" )
[condition][]Some leaf must not be cut=exists Fact( says == "can be trimmed: no" )
