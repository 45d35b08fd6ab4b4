# Sentences that speak of timber floors. None may be taken for a general sentence, so that the order of the files does not matter.

# --- what the floor is

[condition][]What carries the floor is worked out here=not Fact( name == "carrier judged by" )

# --- what has been looked at, and what has not
[condition][]The deck and its joists have all been measured=not Unknown( about == "", name in ( "deck thickness", "joist breadth", "joist depth", "joist centres", "joist span" ) )
[condition][]Some measure of the deck or its joists has not been taken=exists Unknown( about == "", name in ( "deck thickness", "joist breadth", "joist depth", "joist centres", "joist span" ) )
[condition][]The joists have all been measured=not Unknown( about == "", name in ( "joist breadth", "joist depth", "joist centres", "joist span" ) )
[condition][]Some measure of the joists has not been taken=exists Unknown( about == "", name in ( "joist breadth", "joist depth", "joist centres", "joist span" ) )
[condition][]Nobody has measured where it is and how large=exists Unknown( about == $thing.about, name in ( "notch from support", "notch depth", "hole from support", "hole diameter" ) )
[condition][]Nobody has looked into the timber=exists Unknown( about == "", name in ( "rot", "insect attack", "joist ends damp", "damp" ) )

# --- what has been found

# --- how much it bends and bears
[condition][]The bare deck bends more between joists than {figure} allows=$bare : Fact( name == "deck ratio before", about == "" ) Figure( name == "{figure}", number > $bare.number )
[condition][]The finished deck bends more between joists than the tile stands=$deck : Fact( name == "deck ratio after", about == "" ) Fact( name == "bending the tile stands", about == "", number > $deck.number )
[condition][]The finished deck bends more between joists than {figure} allows=$deck : Fact( name == "deck ratio after", about == "" ) Figure( name == "{figure}", number > $deck.number )
[condition][]The loaded joists bend more than {figure} allows=$joist : Fact( name == "joist ratio after", about == "" ) Figure( name == "{figure}", number > $joist.number )
[condition][]The loaded joists sag by more than {figure} of the building limit=$sag : Fact( name == "joist deflection share", about == "" ) Figure( name == "{figure}", number < $sag.number )
[condition][]The load takes more than {figure} of the joists in {kind:bending|shear|bearing}=$use : Fact( name == "{kind} use", about == "" ) Figure( name == "{figure}", number < $use.number )

# --- the build-up
[condition][]The old deck stays=Fact( name == "old floor", about == "", text != "goes" )
