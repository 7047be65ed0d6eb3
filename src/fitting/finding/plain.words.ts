/**
 * Words that are left as they are, so that no everyday word is taken for a misspelt trade word.
 * Common English, from memory; the list need not be complete, only cover what lies near the
 * lexicon by letters.
 */

/** Small words that tell nothing apart: skipped when phrases are looked up, never a feature. */
export const SMALL_WORDS: ReadonlySet<string> = new Set(
  (
    'a an the this that these those there here it its i you he she we they my your our his her their ' +
    'mine ours is are am was were be been being do did does have has had having got get gets getting ' +
    'as so such very really quite rather just bit of and or at if when whenever where while then than ' +
    'because which who what how like kind sort almost about also even still ever with for could would ' +
    'may might shall make makes making made feel feels feeling look looks looking seem seems seemed ' +
    'little properly actually literally basically honestly simply maybe perhaps please help well yes aye ' +
    'man sorry awful awfully totally super us them one ones himself itself myself think guess know tell ' +
    'says say on in to too much can will only right same way thing bit some any want other own lot put ' +
    'set come comes coming along into onto but though although however plus since after before bit by ' +
    'go goes went take takes up off out down away over keep let'
  ).split(' '),
)

/** Never part of a path: they may stand anywhere between the words of a phrase. */
export const NOT_IN_PATHS: ReadonlySet<string> = new Set(
  'a an the of is are at your be it and'.split(' '),
)

export const PLAIN_WORDS: ReadonlySet<string> = new Set(
  (
    'able above ache across add afraid again age ago air alike alive alone already always angry animal ' +
    'annoying another answer anyone anything apple area around ask aunt autumn awake baby bad bag bake ' +
    'bank bare bath bean bear beat bed been beer begin best better bird birth bit black blame blank bless ' +
    'blow blue board boat bone book boot born boss both bowl box boy brave bread break brick bright bring ' +
    'brown brush build burn bus busy buy cake call calm camera came car card care carry case cat cause ' +
    'chance cheap check child choice clean clear click climb clock clothes cloud club coach coast coffee ' +
    'cold colour come comfort cook cool copy cost could count country cousin cover cream cross cry cup cute ' +
    'daily dark date daughter day dead deal dear decide desk didn dinner dirt dish dog doing dollar done ' +
    'door double doubt dozen drawn dream drew drink drive dry due dust duty each early earn earth easy eat ' +
    'egg eight either else email english enjoy enough evening every exam eye face fact fair fake false ' +
    'family far farm fast fault fear feed fell felt few field fight film find fine finger finish fire first ' +
    'fish five fix flesh floor flow flower follow food foot force forget form found four free fresh friend ' +
    'full fun funny game garden gave gift girl give glad glass goal gold gone good grand grass great green ' +
    'grey ground group guess guy hair half hall hand happen happy hard hat hate head hear heart heat heavy ' +
    'held hello here hide hill hit hole home honest hope horse hospital hot hotel hour house hurt husband ice ' +
    'idea inch indeed instead iron island issue job join joke joy jump keen keep kept key kick kid kill kind ' +
    'king kiss kitchen knee knew knife knit know lace lady lake land language last late laugh law lazy lead ' +
    'leaf learn least leave left leg lemon less lesson letter level lie life light like list listen live ' +
    'load lock look lose lost loud love luck lunch lying mad mail main man many map mark market marry match ' +
    'mate matter may maybe mean meant meat meet men mess met might mile milk mind minute mirror miss mistake ' +
    'mix model moment money month mood moon more morning most mother motion mount mouse mouth move movie ' +
    'much mum music must nail name nasty near neat need never new news next nice night nine nobody noise none ' +
    'normal north nose note notice now number obvious odd offer office often oil old once onion only open ' +
    'orange order other ought out own pack page paid pain paint pair pale pants paper park part party pass ' +
    'past path pattern pay peace pen people pepper phone photo pick picture piece pink place plain plan plant ' +
    'plate play please poem police poor possible post pot pound power pray pretty price print prize problem ' +
    'proper proud pure quick quiet quit race rain raise ran rare rate reach read ready real reason red rest ' +
    'rice rich ride right ring rise river road rock roof room rope rose rough round row rule run sad safe ' +
    'said sail salt same sand sat save say scared school sea season second secret seen self sell send sense ' +
    'seven several shade shake shame shape share sharp she sheep sheet shine ship shoe shop shout sick sign ' +
    'silly silver simple sing sister six size skill sky sleep slow smell smile smoke snow social sock sofa ' +
    'soft sold some son song soon sort sound soup south space speak special speed spend sport spot spring ' +
    'square stage stair stamp star stay steel step stone stood store storm story street strong student study ' +
    'stupid style sugar suit summer sun sure surface sweet swim table talk tall taste tea teach team tell ten ' +
    'test text thank their them then they thick thin think third those thought three threw throw ticket tidy ' +
    'tie time tired today toe told tomorrow tone tongue tool tooth touch town toy train travel tree trick ' +
    'trip trouble true trust try tube two type ugly uncle unit use usual value van very view village visit ' +
    'voice wait wake walk wall war warm watch water weak wear weather wedding week weight weird welcome west ' +
    'wet whale wheel where white whole whose wife wild window wine winter wire wish woman women won wonder ' +
    'wood word work world worry worse worth wound write wrong year yellow yesterday yet young zero hour hours ' +
    'wore worn clothes sewing sewed stitched needle thread machine iron ironed steam steamed pressed size ' +
    'sizes doll house dressing holes whales hens toddler customer something someone everybody everyone ' +
    'anybody nothing somehow somewhere sitting standing bending borrowed friend friends daughter mothers ' +
    'pencil towel pancake kangaroo ghost witch nun crow cow pig horse duck chicken hen goose ghosts monster ' +
    'fitting fit fits fitted problem problems trouble issue going nearly three four whom shall ought least ' +
    'mum nan gran granny sister wearing wears stay stays leaves leaving lots heaps halfway half quarter third ' +
    'height heights weight figure photo mirror person people lady ladies woman women girl body bodies ' +
    'class classes necklace bridge bridges become becomes brought bring brings steeply thicker fade ' +
    'fades folks folk snip snips aged aging pinhead necklaces letter letters post message glasses ' +
    'bracelet chain ring rings watch earring earrings scarf glove gloves coat jacket jumper jeans ' +
    'trousers pants tights shoes heels boots umbrella purse pocket handle basket bench chapter chart ' +
    'cheese cherry chips circus client climate closet clothing column comfort comment common compare ' +
    'contact cost cotton couch court cousin craft crazy creature crowd cruel current cycle dance ' +
    'danger degree delay deliver dentist dessert detail dinner direct doctor document dragon drama ' +
    'drawer driver drum during eager eagle effect effort elbow engine entire escape event example ' +
    'except excuse expect expert explain express extra fabric factory famous fashion feature fence ' +
    'fever finally finance flight focus forest formal forward frame freeze fridge front fruit future ' +
    'garage gather gentle giant glory goose grade grain grape habit handy harbour hardly health ' +
    'hello helmet honey human humour hungry hurry image impact include income inside instruct island ' +
    'jelly jewel judge juice jungle junior kettle kidney ladder lately laundry lawyer leader league ' +
    'leather lecture legal lemon library liquid lively loaf local lonely machine magic manage manner ' +
    'master matter mayor medal media member memory mental metal method minor modern moral motor ' +
    'muddy muscle museum naked narrow nation nature nearby nephew niece noble noisy novel nurse ' +
    'object ocean often olive opera option orange organ outfit oven owner palace panel parade parent ' +
    'patient peace pearl penny period phrase piano picnic pilot planet plastic pleasure plenty ' +
    'pocket poetry polite powder prefer prepare present press prince prison private profit project ' +
    'promise proof protect public puppy purple puzzle quarter queen question rabbit radio random ' +
    'rapid rather recipe record reduce refuse regret relax remain remove repair repeat reply report ' +
    'rescue result return reward rhythm rocket royal sample sauce scale scene school science score ' +
    'screen search second select senior sense series serve service seven shadow shelter shirt shock ' +
    'shower signal simple single sister situation skill slice slide slipper smart smooth snake ' +
    'social soldier solid solve source speech spider spirit spoil spoon staff stamp stand station ' +
    'statue steady stick stomach storage story strange stranger stream stress strike strip style ' +
    'subject success sudden suffer summer supper supply support surprise survey swim switch symbol ' +
    'system tailor talent target taxi teacher temper temple tennis term theatre theory thick thief ' +
    'thirty thread throat thunder ticket tiger timber title tomato tongue topic total tough towel ' +
    'tower track trade traffic train travel treat trial tribe trick trouble truck trust truth tunnel ' +
    'turkey twelve twenty twice uncle under uniform union unique until upper upset urban useful ' +
    'valley value vanish velvet video violin virus visit volume wagon waste weapon weather weekend ' +
    'weigh west whisper window winter wisdom witness wonder wooden worker writer yard youth behave ' +
    'behaves brand bride broken budget butter button cabin camel canal candy cannon carrot castle ' +
    'ceiling centre century cereal chalk champion channel charge charm chase cheek chicken chief ' +
    'chocolate choir'
  ).split(' '),
)
