[condition][]Nobody has looked into the timber=exists Unknown( about == "", name in ( "rot", "insect attack" ) )
