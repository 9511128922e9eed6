/** Published studies by the kind of work they trained, to see where the model errs one way. */
export interface KindOfWork {
  readonly name: string;
  /** Files of scenarios/studies without their ending. */
  readonly studies: readonly string[];
  /** Lifts of the catalogue that are work of this kind; reports of such programs say how it errs. */
  readonly lifts: readonly string[];
}

export const kindsOfWork: readonly KindOfWork[] = [
  {
    name: 'squats',
    studies: ['bloomquist-2013', 'hartmann-2012', 'kubo-2019', 'pallares-2020', 'rhea-2016'],
    lifts: ['back squat', 'front squat', 'box squat', 'low-bar squat'],
  },
  {
    name: 'knee extension machine and leg press',
    studies: [
      'franchi-2014',
      'graves-1989',
      'mcmahon-2014',
      'mcmahon-2014-lengths',
      'narici-1996',
      'reeves-2004',
      'reeves-2009',
    ],
    lifts: ['machine knee extension', 'leg press'],
  },
  {
    name: 'holds of the knee extensors',
    studies: [
      'alegre-2014',
      'bandy-1993',
      'folland-2005',
      'noorkoiv-2014',
      'noorkoiv-2015',
      'ullrich-2009',
      'weir-1995',
    ],
    lifts: [],
  },
  {
    name: 'isokinetic knee extension',
    studies: ['barak-2004', 'blazevich-2007', 'sharifnezhad-2014', 'valamatos-2018'],
    lifts: [],
  },
  {
    name: 'Nordic lowering',
    studies: ['andrews-2025', 'brughelli-2010', 'pincheira-2022', 'ribeiro-alvares-2018'],
    lifts: ['Nordic lowering', 'Nordic lowering on a slope'],
  },
  {
    name: 'leg curls and isokinetic knee flexion',
    studies: [
      'aquino-2010',
      'kilgallon-2007',
      'maeo-2021',
      'marusic-2020',
      'potier-2009',
      'presland-2020',
      'timmins-2016',
    ],
    lifts: ['seated leg curl', 'lying leg curl'],
  },
  {
    name: 'calf work',
    studies: ['kassiano-2023', 'kinoshita-2023', 'kitai-1989'],
    lifts: [
      'standing calf raise',
      'single-leg calf raise',
      'seated calf raise',
      'leg-press calf raise',
    ],
  },
  {
    name: 'curls',
    studies: ['pinto-2012', 'sato-2021', 'zabaleta-korta-2023'],
    lifts: ['standing curl', 'incline curl', 'preacher curl', 'cable curl'],
  },
  {
    name: 'triceps work',
    studies: ['goto-2019', 'knapik-1983', 'maeo-2023', 'sugisaki-2015'],
    lifts: ['overhead triceps extension', 'triceps pushdown', 'lying triceps extension'],
  },
  {
    name: 'bench press',
    studies: ['clark-2011', 'martinez-cava-2019'],
    lifts: ['bench press', 'close-grip bench press'],
  },
];
