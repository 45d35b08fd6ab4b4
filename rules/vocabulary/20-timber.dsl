# Sentences that speak of timber floors. None may be taken for a general sentence, so that the order of the files does not matter.

# --- what the floor is
[condition][]The floor stands on joists=Fact( about == "", says == "base family: timber" )
[condition][]The floor floats on insulation=Fact( about == "", says == "base family: floating" )
[condition][]Boards make the deck=Fact( about == "", says == "base kind: boards" )
[condition][]Sheets make the deck=Fact( about == "", says == "base kind: sheet" )
[condition][]Boards or sheets make the deck=Fact( name == "base kind", about == "", text in ( "boards", "sheet" ) )
[condition][]Old tiles cover the deck=Fact( about == "", says == "base kind: tiles" )
[condition][]Stone goes on top=Fact( about == "", says == "tile sort: stone" )
[condition][]Tiles other than stone go on top=not Fact( about == "", says == "tile sort: stone" )
[condition][]Heat comes through the floor=Fact( about == "", says == "heated: yes" )
[condition][]Water often reaches the floor=not Fact( about == "", says == "wetness: seldom wet" )
[condition][]The floor may lie over open ground=not Fact( about == "", says == "storey: upper floor" )

# --- what has been looked at, and what has not
[condition][]Nobody has measured the {name}=Unknown( name == "{name}", about == "" )
[condition][]Nobody has looked for {name}=Unknown( name == "{name}", about == "" )
[condition][]The joists have all been measured=not Unknown( about == "", name in ( "joist breadth", "joist depth", "joist centres", "joist span" ) )
[condition][]Some measure of the joists has not been taken=exists Unknown( about == "", name in ( "joist breadth", "joist depth", "joist centres", "joist span" ) )
[condition][]Nobody has looked into the timber=exists Unknown( about == "", name in ( "rot", "insect attack", "joist ends damp", "damp" ) )

# --- what has been found
[condition][]Loose boards have been found=Fact( about == "", says == "loose boards: yes" )
[condition][]Rot has been found=Fact( about == "", says == "rot: yes" )
[condition][]Insect attack has been found=Fact( about == "", says == "insect attack: yes" )
[condition][]Damp joist ends have been found=Fact( about == "", says == "joist ends damp: yes" )
[condition][]Damp has been found=Fact( about == "", says == "damp: yes" )
[condition][]Swollen sheets have been found=Fact( about == "", says == "swollen: yes" )
[condition][]A waxed face keeps adhesive off=Fact( about == "", says == "wax-faced: yes" )
[condition][]Chipboard that water spoils makes the deck=Fact( about == "", says == "base: chipboard" ) Fact( about == "", says == "moisture-resistant: no" )
[condition][]Sheet edges hang between joists=Fact( about == "", says == "noggings: no" )
[condition][]A partition stands on the joists=Fact( about == "", says == "partition on joists: yes" )
[condition][]No struts steady the joists=Fact( about == "", says == "strutting: no" )
[condition][]Air does not pass beneath the floor=Fact( name == "underfloor ventilation", about == "", text in ( "poor", "none" ) )
[condition][]Pipes or cables run below=Fact( name == "services below", about == "", text != "none" )
[condition][]The whole floor bounces=Fact( about == "", says == "springy: yes" )

# --- how much it bends and bears
[condition][]The bare deck bends more between joists than {figure} allows=$bare : Fact( name == "deck ratio before", about == "" ) Figure( name == "{figure}", number > $bare.number )
[condition][]The finished deck bends more between joists than {figure} allows=$deck : Fact( name == "deck ratio after", about == "" ) Figure( name == "{figure}", number > $deck.number )
[condition][]The loaded joists bend more than {figure} allows=$joist : Fact( name == "joist ratio after", about == "" ) Figure( name == "{figure}", number > $joist.number )
[condition][]The loaded joists sag by more than {figure} of the building limit=$sag : Fact( name == "joist deflection share", about == "" ) Figure( name == "{figure}", number < $sag.number )
[condition][]The load takes more than {figure} of the joists in {kind:bending|shear|bearing}=$use : Fact( name == "{kind} use", about == "" ) Figure( name == "{figure}", number < $use.number )
[condition][]The deck falls short of its least thickness=Fact( about == "", says == "deck strength: short" )

# --- the build-up
[condition][]The old deck stays=Fact( name == "build-up", about == "", text not in ( "new deck", "deck let in between the joists" ) )
