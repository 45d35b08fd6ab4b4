# Sentences about the tile, its bed, its joints, the air in the room and time.

# --- the tile
[condition][]The tile is large, a plank or a slim panel=Fact( name == "tile format", text in ( "large", "plank", "slim panel" ) )
[condition][]The tile is stone or cement-bound=Fact( name == "tile sort", text in ( "stone", "cement-bound" ) )
[condition][]The tile is of dense ceramic or glass=Fact( name == "tile sort", text in ( "dense ceramic", "glass" ) )
[condition][]The tile is irregular=Fact( says == "irregular: yes" )
[condition][]The tile is true to size=not Fact( says == "irregular: yes" )
[condition][]The tiles differ in thickness=Fact( says == "gauged: no" )
[condition][]The tiles are of one thickness=not Fact( says == "gauged: no" )
[condition][]Moisture warps or stains the tile=Fact( says == "moisture-sensitive: yes" )
[condition][]A trace of moisture ruins the tile=Fact( says == "very moisture-sensitive: yes" )
[condition][]A trace of moisture does not ruin the tile=not Fact( says == "very moisture-sensitive: yes" )
[condition][]Colour shows through the tile=Fact( says == "light or translucent: yes" )

# --- what is not said
[condition][]Nobody has said how badly moisture harms the tile=Unknown( name == "very moisture-sensitive", about == "" )
[condition][]Nobody has said whether the sun lies on the floor=Unknown( name == "sunlit", about == "" )

# --- the floor and the room
[condition][]The floor is of timber or floats=Fact( name == "base family", text in ( "timber", "floating" ) )
[condition][]No heating warms the floor=not Fact( says == "heated: yes" )
[condition][]The base takes a primer of its own=exists Laid( family == "primer", layer not in ( "leveller-primer", "sulfate-sealer" ) )
[condition][]The sun lies on the finished floor=Fact( says == "sunlit: yes" )
[condition][]The sun shines on the work=Fact( says == "sun on the work: yes" )
[condition][]The base has joints of its own=Fact( says == "existing joints: yes" )
[condition][]A wall or beam holds the floor from below=Fact( says == "supporting wall below: yes" )
[condition][]A door has been described=exists Fact( name == "door" )
[condition][]No door has been described=not Fact( name == "door" ) not Fact( says == "extent: part of a room" )
[condition][]The floor springs underfoot=Fact( says == "springy: yes" )

# --- what follows
[consequence][]Call the tile irregular=conclude( "irregular", "", "yes" )
