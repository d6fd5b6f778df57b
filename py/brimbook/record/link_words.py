"""The preset dictionary of version 1 links. Never change it: add a version instead.

Commonest last, as deflate finds near words in fewer bits.
"""

WORDS_1 = (
    '"filler_density":"filler":"opening_other":"top_diameter":"bottom_diameter":"diameter":"length":"width":"height":'
    '"ruler":"solid":"tapered","box","cylinder","before":"after":"full":"empty":"dry_filler","dimensions","jug",'
    '"full_minus_empty","gypsum","portland","paraffin","beeswax","coconut","own","particle_density":"3.15 g/mL"'
    '"2.70 g/mL""0.40""0.70""scooped":"left":"yes","blend","set","0.77 g/mL""0.90 g/mL""0.82 g/mL""0.96 g/mL"'
    ' lb oz/lb in °F kg 1/2 mm ","notes":"","made_on":"2026-2027-2028-"20-"10-"11-"12-"01-"02-"03-"04-"05-"06-"07-"08-"09-'
    '{"version":1,"id":"-4","name":"","made_on":"202","casts":[{"pieces":"1","cavity":{"way":"on_scale","readings":'
    '[{"water":" g"},{"water":" g"}],"temperature":"20 °C","readability":"1 g","line_error":"0.5 mm",'
    '"opening_across":" mm"},"allowance":"10 %","mix":{"powder":{"kind":"rapid","particle_density":"2.98 g/mL"},'
    '"water_to_powder":"4:1","air":"0 %","rule":"1.88"},"scooped":" g","left":" g"}],"wells":[{"fill":{"way":"poured_out",'
    '"readings":[{"water":" g"}],"temperature":"20 °C","readability":"1 g","line_error":"0.5 mm","opening_across":" mm"},'
    '"sealed":"no","wax":{"kind":"soy","density_poured":"0.86 g/mL","density_set":"0.92 g/mL"},"basis":"poured",'
    '"fragrance":{"load":"6 %","basis":"wax","density":"1 g/mL"},"dye":"0 %","rule":"0.834"}]}'
).encode()
