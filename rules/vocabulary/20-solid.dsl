# Sentences about solid floors, coverings, asbestos, moisture, cracks and floors of two bases.

# --- one of a few values, written out in the rule
[condition][]The {name} is either {one} or {two}=Fact( name == "{name}", about == "", text in ( "{one}", "{two}" ) )

# --- asbestos

# --- what the base is
[condition][]The base is bound with {one} or {two}=Fact( name == "base binder", about == "", text in ( "{one}", "{two}" ) )
[condition][]The base is bound with {binder}=Fact( about == "", says == "base binder: {binder}" )

# --- where the floor lies and what is beneath

# --- what state the base is in
[condition][]There are hairline or fine cracks=Fact( name == "cracks", about == "", text in ( "hairline", "fine" ) )
[condition][]There are {kind} cracks=Fact( about == "", says == "cracks: {kind}" )

# --- moisture
[condition][]There has been no moisture reading at all=Unknown( name == "floor humidity", about == "" ) Unknown( name == "CM reading", about == "" )

# --- ways of building
[condition][]The tiles go onto the base that is there=Fact( about == "", says == "old floor: stays and is tiled" )

# --- floors of two bases

# --- dust: the remedies that make it

# --- the layers of a floor as it is today
[condition][]It lies on another deck=Fact( about == $thing.about, says == "found place: on a deck" )
[condition][]It lies on another layer=Fact( name == "found place", about == $thing.about, text != "on the carrier" )
[condition][]Nothing brings it up=not Fact( about == $thing.about, says == "found verdict: comes up" )
[condition][]Nobody has said that it is screwed=not Fact( name == "found fixing", about == $thing.about, text in ( "screwed", "glued and screwed" ) )
