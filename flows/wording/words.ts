import type { AccessoryKind, BaseMaterial, DatumKind } from '../../core/wall/wall.ts';

/** The trade's words for the values of a job, as they stand in the middle of a sentence. */
export const MATERIAL: Readonly<Record<BaseMaterial, string>> = {
  'clay-brick': 'brick',
  'concrete-block': 'concrete block',
  concrete: 'concrete',
  'aerated-concrete': 'aerated block',
  'natural-stone': 'stone',
  'plasterboard-on-timber-studs': 'plasterboard on timber studs',
  'plasterboard-on-steel-studs': 'plasterboard on steel studs',
  'plasterboard-on-dabs': 'plasterboard on dabs',
  'lath-and-plaster': 'lath and plaster',
  'fibre-cement-on-studs': 'fibre cement sheet on studs',
  timber: 'solid timber',
  unknown: 'wall not known',
};

export const DATUM: Readonly<Record<DatumKind, string>> = {
  floor: 'the floor',
  mantel: 'the mantel',
  furniture: 'the furniture',
  ceiling: 'the ceiling',
  nosing: 'the nosing line',
};

const COUNTRY: Readonly<Record<string, string>> = {
  AU: 'Australia',
  NZ: 'New Zealand',
  UK: 'United Kingdom',
  IE: 'Ireland',
  US: 'United States',
  CA: 'Canada',
  EU: 'Europe',
  other: 'another country',
  unknown: 'country not known',
};

export const VALUE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'piece.kind': { mirror: 'mirror', picture: 'picture', canvas: 'canvas', panel: 'panel' },
  'piece.glass': {
    none: 'no glass',
    plain: 'ordinary glass',
    safety: 'safety glass',
    acrylic: 'acrylic',
    unknown: 'glass not known',
  },
  'piece.lit': { true: 'needs mains', false: 'no mains', unknown: 'mains not known' },
  'wall.cores': {
    solid: 'solid units',
    perforated: 'units with holes through them',
    hollow: 'hollow units',
    unknown: 'cores not known',
  },
  'wall.wet': {
    no: 'not a wet wall',
    bathroom: 'bathroom wall',
    shower: 'shower wall',
    unknown: 'wet or dry not known',
  },
  'wall.coating': { none: 'no textured coating', textured: 'textured coating', unknown: 'coating not known' },
  'wall.asbestos': {
    'tested-clear': 'tested, clear of asbestos',
    'not-tested': 'not tested for asbestos',
    unknown: 'not known whether tested',
  },
  'wall.tensioned': {
    no: 'no tensioned steel',
    possible: 'tensioned steel possible',
    scanned: 'scanned for tensioned steel',
    unknown: 'tensioned steel not known',
  },
  'wall.separating': {
    true: 'shared or fire wall',
    false: 'not a shared wall',
    unknown: 'shared or not: not known',
  },
  'wall.condition': {
    sound: 'wall sound',
    poor: 'wall crumbling, damp or cracked',
    unknown: 'soundness not known',
  },
  'wall.farSide': { seen: 'far side looked at', unknown: 'far side not looked at' },
  'place.below': {
    nothing: 'nothing below',
    bed: 'bed below',
    sofa: 'sofa below',
    cot: 'cot below',
    basin: 'basin below',
    fireplace: 'fireplace below, in use',
    'fireplace-unused': 'fireplace below, never used',
    walkway: 'people walk below',
    unknown: 'what is below not known',
  },
  'building.country': COUNTRY,
  'building.kind': {
    house: 'house',
    flat: 'flat',
    public: 'public building',
    unknown: 'kind of building not known',
  },
  'building.tenure': {
    owner: 'your own wall',
    tenant: 'rented',
    client: 'a client’s wall',
    unknown: 'whose wall not known',
  },
  'building.consent': {
    true: 'the landlord said yes',
    false: 'the landlord has not said yes',
    unknown: 'consent not known',
  },
  'building.heritage': { true: 'listed building', false: 'not listed', unknown: 'listed or not: not known' },
  'building.seismic': {
    true: 'earthquakes reckoned with',
    false: 'no earthquakes',
    unknown: 'earthquakes not known',
  },
  'crew.dustExtraction': {
    true: 'dust extraction',
    false: 'no dust extraction',
    unknown: 'extraction not known',
  },
  'crew.lifter': { true: 'a lifter or ledge', false: 'no lifter', unknown: 'lifter not known' },
};

export const ACCESSORY: Readonly<Record<AccessoryKind, string>> = {
  socket: 'socket',
  switch: 'switch',
  light: 'light',
  thermostat: 'thermostat',
  heater: 'heater',
  'consumer-unit': 'switchboard',
  'blank-plate': 'blank plate',
  tap: 'tap',
  basin: 'basin',
  toilet: 'toilet',
  shower: 'shower',
  radiator: 'radiator',
  boiler: 'boiler',
  gas: 'gas point',
  window: 'window',
  door: 'door',
  pipe: 'pipe',
  cable: 'cable',
};
