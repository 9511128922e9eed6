/** Published training groups by id: the file in `scenarios/studies` → the group's program there. */
export const written: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'noorkoiv-2014': {
    noorkoiv2014_SL: 'holds at short length',
    noorkoiv2014_LL: 'holds at long length',
  },
  'noorkoiv-2015': {
    noorkoiv2015_LL: 'holds at long length',
    noorkoiv2015_SL: 'holds at short length',
  },
  'alegre-2014': {
    alegre2014_K90: 'holds at 90 degrees',
    alegre2014_K50: 'holds at 50 degrees',
  },
  'kitai-1989': {
    kitai1989: 'holds with the foot square',
  },
  'weir-1995': {
    weir1995: 'holds at 45 degrees',
  },
  'bandy-1993': {
    bandy1993_30: 'holds at 30 degrees',
    bandy1993_60: 'holds at 60 degrees',
    bandy1993_90: 'holds at 90 degrees',
  },
  'folland-2005': {
    folland2005_iso4: 'holds at four angles',
    folland2005_dyn: 'moving work',
  },
  'knapik-1983': {
    knapik1983: 'holds at 90 degrees',
  },
  'ullrich-2009': {
    ullrich2009_G1: 'long holds',
    ullrich2009_G2: 'long lifts',
    ullrich2009_G3: 'long holds and lifts',
  },
  'valamatos-2018': {
    valamatos2018_PART: 'partial range',
    valamatos2018_FULL: 'full range',
  },
  'mcmahon-2014': {
    mcmahon2014_LR: 'long range',
    mcmahon2014_SR: 'short range',
  },
  'mcmahon-2014-lengths': {
    mcmahon2013_LL: 'lengthened range',
    mcmahon2013_SL: 'shortened range',
  },
  'narici-1996': {
    narici1996: 'leg extensions',
  },
  'rhea-2016': {
    rhea2016_QUARTER: 'quarter squat',
    rhea2016_HALF: 'half squat',
    rhea2016_FULL: 'full squat',
  },
  'kubo-2019': {
    kubo2019_FST: 'full squat',
    kubo2019_HST: 'half squat',
  },
  'bloomquist-2013': {
    bloomquist2013_DS: 'deep squat',
    bloomquist2013_SS: 'shallow squat',
  },
  'hartmann-2012': {
    hartmann2012_DEEP: 'deep squat',
    hartmann2012_QUARTER: 'quarter squat',
  },
  'pallares-2020': {
    pallares2020_FULL: 'full squat',
    pallares2020_PARALLEL: 'parallel squat',
    pallares2020_HALF: 'half squat',
  },
  'martinez-cava-2019': {
    martinezcava2019_FULL: 'full range',
    martinezcava2019_TWOTHIRDS: 'top two thirds',
    martinezcava2019_ONETHIRD: 'top third',
  },
  'clark-2011': {
    clark2011_FULL: 'full range',
    clark2011_VROM: 'several ranges',
  },
  'graves-1989': {
    graves1989_A: 'flexed half',
    graves1989_B: 'straight half',
    graves1989_AB: 'whole range',
  },
  'barak-2004': {
    barak2004: 'middle range',
  },
  'pinto-2012': {
    pinto2012_FULL: 'full range',
    pinto2012_PART: 'partial range',
  },
  'sato-2021': {
    sato2021_EXT: 'near straight',
    sato2021_FLEX: 'near bent',
  },
  'goto-2019': {
    goto2019_PRE: 'partial range',
    goto2019_FRE: 'full range',
  },
  'kassiano-2023': {
    kassiano2023_INITIAL: 'first half',
    kassiano2023_FULL: 'whole range',
    kassiano2023_FINAL: 'last half',
  },
  'maeo-2021': {
    maeo2021_SEATED: 'seated curl',
    maeo2021_PRONE: 'lying curl',
  },
  'maeo-2023': {
    maeo2022_OVERHEAD: 'arm overhead',
    maeo2022_NEUTRAL: 'arm down',
  },
  'kinoshita-2023': {
    kinoshita2023_STAND: 'standing',
    kinoshita2023_SEAT: 'seated',
  },
  'zabaleta-korta-2023': {
    zabaleta2023_INCLINE: 'incline curl',
    zabaleta2023_PREACHER: 'preacher curl',
  },
  'blazevich-2007': {
    blazevich2007_CON: 'lifting',
    blazevich2007_ECC: 'lowering',
  },
  'franchi-2014': {
    franchi2014_ECC: 'lowering',
    franchi2014_CON: 'lifting',
  },
  'potier-2009': {
    potier2009: 'lowered curls',
  },
  'reeves-2009': {
    reeves2009_ECC: 'lowering',
    reeves2009_CONV: 'usual work',
  },
  'reeves-2004': {
    reeves2004: 'presses and extensions',
  },
  'sharifnezhad-2014': {
    sharifnezhad2014_HIGHVEL: 'fast and long',
    sharifnezhad2014_SHORT: 'slow and short',
  },
  'timmins-2016': {
    timmins2016_ECC: 'lowering',
    timmins2016_CON: 'lifting',
  },
  'presland-2020': {
    presland2020_ECC: 'heavier lowering',
    presland2020_CONV: 'usual',
  },
  'ribeiro-alvares-2018': {
    ribeiro2018: 'Nordic lowering',
  },
  'marusic-2020': {
    marusic2020: 'long lowering',
  },
  'pincheira-2022': {
    pincheira2022: 'Nordic lowering',
  },
  'andrews-2025': {
    andrews2025: 'Nordic lowering',
  },
  'brughelli-2010': {
    brughelli2010_KF: 'lowering',
    brughelli2010_KE: 'lowering',
  },
  'kilgallon-2007': {
    kilgallon2007_ECC: 'lowering',
    kilgallon2007_CON: 'lifting',
  },
  'aquino-2010': {
    aquino2010: 'long length',
  },
  'sugisaki-2015': {
    sugisaki2015: 'triceps extensions',
  },
};

const noDorsiflexion =
  'the model has no action that pulls the foot up (tibialis anterior): fibre length -3 % after short and +4 % after long holds';
const noBack =
  'the model has no action that straightens the lower back; torque was read by part of its range';

/** Groups that the model cannot express even roughly, and why. */
export const notWritten: Readonly<Record<string, string>> = {
  hinks2021_short: noDorsiflexion,
  hinks2021_long: noDorsiflexion,
  steele2013_FULL: noBack,
  steele2013_MID: noBack,
  graves1992_A: noBack,
  graves1992_B: noBack,
  graves1992_AB: noBack,
  butterfield2005_rabbit: 'one bout of lowering in rabbits, no training of people',
};
