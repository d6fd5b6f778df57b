"""The preset dictionaries of links, one a version. Never change one: add a version instead.

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

# The cast in full: recipes of several ingredients, pours, bowl, clamp, clock, drying, leak test, finish.
_CAST_2 = (
    '"finishing":{"shape":"outline","inside_outline":" mm","outside_outline":" mm","inside_area":"","outside_area":"",'
    '"primer_coats":"1","primer_hours":"2 h","primer_coverage":"8 m²/L","sealer_coverage":"paint_coverage":"'
    '"inside_top":" mm","inside_bottom":" mm","inside_height":" mm","outside_top":" mm","outside_bottom":" mm",'
    '"outside_height":" mm","sealer_coats":"2","sealer_hours":"4 h","paint_coats":"2","paint_hours":"2 h"},'
    '"leaking":{"air":"cup","open","covered","opening":" mm","opening_other":"temperature":"humidity":"50 %",'
    '"cup_first":" g","cup_later":" g","cup_opening":" mm","dry":" g","filled":" g","later":" g","emptied":" g",'
    '"hours":"24 h","readability":"1 g"},'
    '"clamping":{"property_class":"8.8","grade":"5","safety":"2","seams":"2","washer_outside":" mm","washer_hole":" mm",'
    '"bearing":"8 MPa","modulus":"GPa","flange_thickness":" mm","flange_width":" mm","gap":"0.1 mm","core_weight":" g",'
    '"softens":"55 °C","density":" g/mL","print_volume":" mL","plastic_density":"1.24 g/mL","spool_weight":"1 kg",'
    '"filament":"1.75 mm","plastic":"petg","abs","pla","thread":"m4","m5","m6","1/4-20","depth":" mm","width":" mm",'
    '"core_volume":" mL","print_weight":" g","lasts":"20"},'
    '"role":"plasticizer","polymer","pozzolan","fiber","binder","kind":"metakaolin","silica_fume","fly_ash","slag",'
    '"limestone","titanium_white","yellow_oxide","black_oxide","glass_fiber","plastic_fiber","mine: ","binder_share":"%",'
    '"water_content":"most":"reference_temperature":"follows":"portland","observed","heat":" kJ/kg","pack_weight":"20 kg",'
    '"sheet":"water_least":"water_most":"working_time":" min","demold_time":" h","base":"mix","moisture":"trial":" g",'
    '"recipe":"weights","percent","water_share":"40 %","trial_powder":" g","trial_water":" g","allowance_from":"typed",'
    '"bowl":"first","batch":{"bowl":" mL","molds":"2","mixing_time":"3 min","pouring_time":"1 min"},"held_back":"25 %",'
    '"scooped_water":" g","flow":{"cone":"mini","flow_table","mortar_table","own","base":" mm","target":" mm"},'
    '"others":[{"kind":"sand","role":"sand","particle_density":"2.65 g/mL","share":"100 %"},{"kind":"red_oxide",'
    '"role":"pigment","particle_density":"5.20 g/mL","share":"3 %"}],"parts":"1:1:0.4",'
    '"drying":{"margin":" %","steady":"1 d","dry_weight":" g","readability":"1 g","weights":[{"weight":" g","at":"2026-11-"},'
    '{"weight":" g","at":"2026-12-"}]},'
    '"curing":{"law":"nurse_saul","energy":"41.5","datum":"-10 °C","damp":"3 d","dry":"7 d","before_filling":"1 d",'
    '"temperatures":[{"at":"2026-11-T","temperature":" °C"},{"at":"2026-12-T","temperature":" °C"}],'
    '"poured_at":"2026-11-T","temperature":"20 °C"},'
    '"pours":[{"of":"rapid","when":"2026-11-","powder":" g","water":" g","left_over":" g","short":" g","pieces":"1","cup_volume":" mL",'
    '"cup_full":" g","cup_empty":" g","spread_1":" mm","spread_2":" mm","others":[{"weighed":" g"},{"weighed":" g"}],'
    '"notes":""},{"when":"2026-12-","powder":" g","water":" g","others":[{"weighed":" g"}],"left_over":" g"}],'
).encode()

WORDS_2 = _CAST_2 + WORDS_1

# The candle in full: waxes and pot, scents, melting, outline and wicks, holder, burn test.
_CANDLE_3 = (
    '"own","own","round","oval","rectangle","polygon","path","deep","across","none","little","much","no","wall","unseen","open",'
    '"closed","1A","1B","1","fine","weight","height","auto"'
    '"wax":{"kind":"soy","density_poured":"0.86 g/mL","density_set":"0.92 g/mL","density_at":" °C","expansion":"0.00064",'
    '"cup_volume":" mL","cup_error":" mL","cup_empty":" g","cup_poured":" g","cup_temperature":" °C","cup_set":" g",'
    '"blended":[{"kind":"beeswax","name":"","share":"10 %","density_poured":"0.82 g/mL","density_set":"0.96 g/mL"}]},'
    '"basis":"set","fragrance":{"load":"6 %","basis":"wax","density":"1 g/mL","wax_most":"10 %","scents":[{"name":"",'
    '"parts":"1","supplier_most":"10 %","supplier_basis":"wax","ifra_most":"100 %","flash":" °C","flash_cup":"closed",'
    '"density":" g/mL","sensitizers":[{"name":"","share":" %","class":"1","specific":" %"}]}]},"dye":"0 %","rule":"0.834",'
    '"batch":{"pieces":"3","left":"5 g","melted":" g","capacity":" mL","fill_to":"75 %"},'
    '"melting":{"melt_at":"80 °C","scent_at":"75 °C","stir":"2 min","pour_at":"60 °C","second_at":" °C","melts_at":" °C",'
    '"room":"20 °C","vessel_at":" °C","readings":[{"at":"2026-11-T10:","temperature":" °C"},{"at":"2026-12-T10:",'
    '"temperature":" °C"}],"poured":"2026-11-T","rest":"14 d"},'
    '"outline":{"shape":"round","across":" mm","other":" mm","corner":" mm","sides":"6","path":"M 0 0"},'
    '"wicks":{"count":"2","up_to":"4","from_wall":"12 mm","between":"25 mm","at":[{"x":" mm","y":" mm"},{"x":" mm","y":" mm"}],'
    '"name":"","pool":" mm","rate":"4.5"},'
    '"holder":{"bar_width":"18 mm","slot_width":"2 mm","overhang":"15 mm","bar_thickness":"2 mm","wider":"0 mm",'
    '"clearance":"2 mm","direction":"auto"},'
    '"burning":{"wick":"","rest":"height","rest_height":"13 mm","rest_weight":" g","vessel_weight":" g","room":"20 °C",'
    '"readability":"1 g","cycles":[{"lit_at":"2026-11-T10:00","out_at":"2026-11-T14:00","before":" g","after":" g",'
    '"pool":" mm","reached":"wall","flame":" mm","soot":"none","wick_looks":"fine","wall":" °C","trimmed":"6 mm",'
    '"minutes":"240 min","after_smoke":" s","remarks":""},{"lit_at":"2026-12-T1","out_at":"2026-12-T1","after":" g",'
    '"pool":" mm","reached":"wall"}]}'
).encode()

WORDS_3 = _CANDLE_3 + WORDS_2

# What is bought and sold: packs, prices and lots, work, packaging, labels, batches.
_SELLING_4 = (
    '"own_notes":"","print_time":" h","spool_price":"","coloring":{"name":"","pack_weight":" g","pack_price":"","lot":""},'
    '"pot":"first","holds":"front","market":"eu","us","panel":"cylinder","flat","top","other","round","strip","by":"markup",'
    '"shape":"rectangle","net_weight":" g","weighed":[{"weight":" g"},{"weight":" g"}],"lines":[{"text":""}],"scents":"",'
    '"finishing":{"sealer":{"name":"","pack_volume":" mL","pack_price":"","lot":""},"primer":{"name":"","pack_volume":" mL",'
    '"pack_price":"","lot":""},"paint":{"name":"","pack_volume":" L","pack_price":"","lot":""},"shape":"round",'
    '"powder":{"kind":"mine: ","name":"","role":"binder","pack_weight":"25 kg","pack_price":"","lot":"","sheet":""},'
    '"packaging":[{"name":"Box","pack_pieces":"25","pack_price":"","lot":"","each":"1"},{"name":"Label","pack_pieces":"100",'
    '"pack_price":"","each":"1"}],"selling":[{"vessels":"12","hour_rate":"","labor":{"casting":" min","demolding":" min",'
    '"finishing":" min","filling":" min","packing":" min"},"kilowatt_hour":"0.","printer_power":"1","melter_power":"",'
    '"melter_time":" min","printer_hour":"0.","cast_failures":" %","candle_failures":" %","other_costs":"","by":"margin",'
    '"margin":" %","markup":" %","wholesale_margin":" %","wholesale_markup":" %","shop_margin":" %","fee_share":" %",'
    '"fee_each":"0.","tax":" %","price_step":"0.5","asked":"","fixed":""}],"labels":[{"shape":"rectangle","across":" mm",'
    '"width":" mm","height":" mm","corner":" mm","holds":"all","market":"both","product":"Scented candle","maker":"",'
    '"lines":[{"text":""}],"scents":"","lot":"","net_weight":" g","weighed":[{"weight":" g"}],"cautions":"yes","burn_time":"yes",'
    '"average":"no","code":"yes","panel":"flat","panel_width":" mm","panel_height":" mm","panel_around":" mm","panel_area":"",'
    '"copies":"12","gap":" mm","margin":" mm","first":"1"}],"batches":[{"lot":"","made_on":"2026-","vessels":"12","failed":"1",'
    '"used":[{"role":"binder","name":"","lot":""},{"role":"sand","name":"","lot":""},{"role":"pigment","name":"","lot":""},'
    '{"role":"coating","name":"","lot":""},{"role":"wax","name":"Soy wax","lot":""},{"role":"fragrance","name":"","lot":""},'
    '{"role":"dye","name":"","lot":""},{"role":"wick","name":"","lot":""},{"role":"packaging","name":"","lot":""}],'
    '"went_to":[{"who":"","vessels":"","on":"2026-"},{"who":"","vessels":"","on":"2027-"}],"remarks":""},{"made_on":"2026-'
    '","vessels":"12","used":[{"role":"binder","name":"'
).encode()

WORDS_4 = _SELLING_4 + WORDS_3
