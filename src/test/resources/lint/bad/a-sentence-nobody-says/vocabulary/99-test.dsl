[condition][]Nobody ever says this=Fact( about == "", says == "use: hall" )
