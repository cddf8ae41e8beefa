import type { SiteKind } from '@/lib/database/generated/enums';
import type { MethodKind } from '@/lib/growing/vocabulary';

/** How often a site uses each method, as weights. */
type MethodWeights = Partial<Record<MethodKind, number>>;

export type StorySite = {
  readonly code: string;
  readonly name: string;
  readonly kind: SiteKind;
  readonly methods: MethodWeights;
  /** Tidy sites lose less whatever they do; they are the ones that lime. */
  readonly tidy: boolean;
  readonly trims: boolean;
  readonly grows: 'bags' | 'beds' | 'logs' | 'mixed';
};

/** The fourteen sites of the Larkmoor Growers' Network, all invented. */
export const storySites: readonly StorySite[] = [
  {
    code: 'ASHW',
    name: 'Ashwell Row Garden',
    kind: 'community_garden',
    methods: { hot_water_bath: 3, cold_ferment: 1 },
    tidy: false,
    trims: false,
    grows: 'bags',
  },
  {
    code: 'BRIAR',
    name: 'Briar Lane Allotments',
    kind: 'allotment',
    methods: { cold_lime_soak: 4, cold_ferment: 1 },
    tidy: true,
    trims: false,
    grows: 'bags',
  },
  {
    code: 'COLD',
    name: 'Coldbrook Cellar',
    kind: 'indoor_room',
    methods: { steam: 3, hot_water_bath: 1 },
    tidy: false,
    trims: true,
    grows: 'bags',
  },
  {
    code: 'DUNN',
    name: 'Dunnock School Garden',
    kind: 'school_garden',
    methods: { cold_ferment: 3, hot_water_bath: 1 },
    tidy: false,
    trims: false,
    grows: 'mixed',
  },
  {
    code: 'ELDER',
    name: 'Elder Bank Farm',
    kind: 'farm',
    methods: { hot_water_bath: 4 },
    tidy: false,
    trims: true,
    grows: 'bags',
  },
  {
    code: 'FERN',
    name: 'Fernhollow Woodlot',
    kind: 'farm',
    methods: { cold_lime_soak: 2, hot_water_bath: 1 },
    tidy: true,
    trims: false,
    grows: 'logs',
  },
  {
    code: 'GORSE',
    name: 'Gorse Hill Growers',
    kind: 'community_garden',
    methods: { cold_lime_soak: 4 },
    tidy: true,
    trims: false,
    grows: 'bags',
  },
  {
    code: 'HAZEL',
    name: 'Hazel Court Rooftop',
    kind: 'community_garden',
    methods: { hot_water_bath: 2, cold_lime_soak: 1 },
    tidy: false,
    trims: false,
    grows: 'bags',
  },
  {
    code: 'KESTR',
    name: 'Kestrel Yard',
    kind: 'indoor_room',
    methods: { steam: 2, hot_water_bath: 2 },
    tidy: false,
    trims: true,
    grows: 'bags',
  },
  {
    code: 'LIND',
    name: 'Linden Street Beds',
    kind: 'community_garden',
    methods: { hot_water_bath: 1, cold_ferment: 2 },
    tidy: false,
    trims: false,
    grows: 'beds',
  },
  {
    code: 'MILL',
    name: 'Mill Lane Garden',
    kind: 'community_garden',
    methods: { hot_water_bath: 3, cold_lime_soak: 1 },
    tidy: false,
    trims: false,
    grows: 'mixed',
  },
  {
    code: 'QUARR',
    name: 'Quarry Farm',
    kind: 'farm',
    methods: { cold_lime_soak: 3, hot_water_bath: 1 },
    tidy: true,
    trims: true,
    grows: 'mixed',
  },
  {
    code: 'ROOK',
    name: 'Rook End Allotments',
    kind: 'allotment',
    methods: { cold_ferment: 2, hot_water_bath: 2 },
    tidy: false,
    trims: false,
    grows: 'bags',
  },
  {
    code: 'TARN',
    name: 'Tarn Street Shed',
    kind: 'indoor_room',
    methods: { hot_water_bath: 5 },
    tidy: false,
    trims: false,
    grows: 'bags',
  },
];
