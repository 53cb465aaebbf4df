/** How the trade and the regions spell it, to the one word the readers know (trade.md, part 10). */
export const RESPELT: Record<string, string> = Object.fromEntries(
  Object.entries({
    plasterboard:
      'plasterbord plaserboard plasterborad plaster-board plasterbaord plastaboard platerboard plasteboard',
    drywall: 'dry-wall drywal',
    brick: 'brik bick brikc birck bricke bric brix',
    bricks: 'briks bricls',
    block: 'blok bloc blcok',
    blockwork: 'blokwork',
    concrete: 'conrete concreat concreet concret cocnrete conceret concerete beton béton',
    aerated: 'airated areated aereated aerrated',
    aircrete: 'air-crete',
    plaster: 'plaister plastr palster plater plasterd',
    render: 'rendor rendr rendering',
    rendered: 'rendord',
    lath: 'lathe lats',
    fibre: 'fiber fibr',
    fibro: 'fibro-sheet',
    cement: 'cemment cememt',
    tile: 'tyle',
    tiles: 'tyles',
    stud: 'studd',
    studs: 'studds',
    wall: 'wal wll',
    metal: 'mettle mettal metl',
    timber: 'timbre timbr tmber',
    gypsum: 'gypsom gipsum gypsim',
    furring: 'firring furing',
    mantel: 'mantle mantlepiece mantelpiece mantelshelf mantleshelf mantlepeice mantelpeice mantal',
    ceiling: 'celing ceeling ceilling cieling cealing',
    floor: 'flor flr',
    skirting: 'skirtin baseboard',
    architrave: 'archatrave',
    bottom: 'botom bottem bttm btm',
    centre: 'center cenre cntr centr centere cente centrer',
    centred: 'centered centerd centrd centerred',
    central: 'centrally',
    centres: 'centers',
    middle: 'midle mid middel mddle',
    right: 'rite rigth rh rhs',
    left: 'lft leftt lh lhs',
    height: 'hight heigth hieght heght heigt',
    width: 'widht witdh',
    depth: 'depht',
    weight: 'wieght wheight weigth wight weght',
    mirror: 'mirrer miror mirrow mirorr miirror mirro mirrror mirrir',
    picture: 'pictur pic picure pciture pitcure',
    painting: 'paintin paintng',
    canvas: 'canvass canvus',
    piece: 'peice',
    switch: 'swich swithc',
    socket: 'sockit soket socet',
    sockets: 'sockits sokets',
    powerpoint: 'power-point gpo gpos',
    nothing: 'nuthin nothin nowt nuffin nuthing',
    australia: 'austrailia austalia australi aus aussie',
    between: 'betwen btwn beetween inbetween',
    corner: 'conner cornr',
    couch: 'coutch cuoch',
    vacuum: 'vaccum vacum vaccuum vac',
    bathroom: 'bathrom batroom bathrm',
    hollow: 'holow hallow',
    solid: 'soild sollid',
    perforated: 'perferated perforatd',
    textured: 'textred',
    ordinary: 'ordinery',
    safety: 'saftey safty',
    crumbling: 'crumbleing',
  }).flatMap(([word, forms]) =>
    forms
      .split(' ')
      .filter(Boolean)
      .map((form): [string, string] => [form, word]),
  ),
);

/** The words a misspelling may be corrected to: long enough, or far enough from ordinary words, to be told. */
export const TRADE_WORDS =
  'plasterboard drywall brick bricks brickwork block blocks blockwork concrete aerated aircrete plaster plastered rendered cement timber wooden sandstone limestone granite rubble partition perforated mantel ceiling bottom centred middle height weight mirror picture painting canvas switch socket sockets powerpoint radiator thermostat nothing australia england scotland america zealand bathroom fireplace sideboard headboard laminated toughened acrylic ordinary vacuum crumbling textured heritage landlord cinder masonry gypsum wallpaper'.split(
    ' ',
  );

/** Ordinary words one slip away from a trade word: never "corrected". */
export const ORDINARY = new Set(
  `about above across after halfway hallway brisk brink bricky picky prick blocky bloc blown stood switched swing swish bathrooms heights weigh weight weighted ceilings centering center again ahead alone along also always another around asked awful awake bathe beard because before being belong below bench better black blank blanks blend blind block bloke blokes blond blood bloom board boards bored bought boxed bread break brief bring broad broke brown build built bunch bushes cable call called carry cause centuries century chair chalk chance charge cheap check child class clean clear clock close cloud coach coarse coast couple cough could count course cover crack cramp crate crazy cream creek crook cross crowd crowns curve dance death dirty ditch doing doors doubt draft drain drawn dress drill drink drive earth eight either empty ended enough enter every exact extra faith false feeling fence fender field fight final first fixed flash flats flesh flood floors flour focus force forth found frame frames fresh front fruit frozen funny gable given glasses gloss going grace grade grain grand grant grass grave great green grey grill gross group guard guess guest guide half handy happy hardly heard hearts heavy heights hello hinge holes hollows hooks horse hotel hours house houses human hundred inner inside issue joint joist judge kings large later laugh layer least leave ledge lemon level light limit links lists lived lives local loose lower lucky lunch magic major maker march master match maybe meals medal mental metals metre might miles minor mixed model moist money month moral motor mould mount mouse mouth moved movie music named never newly night noise north noted novel occur ocean offer often older other others ought outer outside owned owners owned painted panes panels paper parts party patch pause peace phone photo pictured pieces pillow pilot pitch place plain plane planks plant planter planters plaques plasters plastic plate plates please point posts pound power prick prints proof prove pulls quick quiet quite radio raise range rapid reach ready reader render renders renter refer relax reply rider rings risen river rocky rough round route royal rungs salon sandy saved scale scene scope score screw seats sense serve seven shade shake shall shape share sharp sheet shelf shell shift shine shirt shock shone shoot shore short should shout shown sides siding sight since sixth sixty sized skill slate sleep slide slope small smart smell smile smoke snake solar soldier solve sorry sound south space spare speak speed spend spent split spoke sport spots squad staff stage stain stair stairs stake stand start state stays steal steam steep steer stick sticky still stock stole stones stood stops store stored stories storm story stove strap strip stuck study stuff style sugar suite super sweet swing table taken taste taxes teach teeth tenth terms tests thank their theme there these thick thing think third those three threw throw thumb tight tiled tiler timer times tired title today token tooth topic total touch tough tower track trade train tread treat trend trial trick tried tries truck truly trunk trust truth twice twist under union until upper upset urban usual value video visit vital voice waist waste watch water weigh weighs wheel where which while white whole whose wider wired woman world worry worse worst would wound write wrong yards young stoned shoes shops stick sofas soft softer tested tender stern listen listing lister ladies laths latest lately latch batter center concert concerts contract steels ceilings sealing healing dealing weights freight width within without with wight right rights riding reading leading heading pending panther pastor poster posters posted pasted faster easter plaited played player players layers flooring flower flowers lower tower bottle bottles button buttons bottoms cotton picket pocket rocket packet jacket bracket brackets ticket sockets stitch snitch sketch twitch mirrors mirrored nearer narrow marrow cinema candle canals canvases canal cannot renting rented rental parent patent talent silent owning downer clients listed lifted gifted heated seated rated dated berated rotated located related created crated breaker breezy freeze bridge bricked blocked blocking locked flocked clocked granted garnet rabble rumble humble tumble trouble double marble stumble nibble bubble pebble nothings notion noting noticed coucher corners cornered corned coroner forner beyond belows orders ordinarily laminate laminates kitchens chicken thicken painter painters paints paining panting printing planting plating plaiting shower showers showed slower shovel shawl vacant valued wooden woollen wood woods pooled steeped stoney stage bedrooms boredom hallways always railway driveway`.split(
    /\s+/,
  ),
);
