/**
 * What packed entries may refer back to (RFC 1951, preset window): the words and the skeleton of a check in canonical
 * form, figures left out. Entries of codec 1 cannot be read without exactly these bytes, so they are never changed; a
 * better one is a further codec with a number of its own.
 */
export const dictionary = Buffer.from(
  [
    '"good""watch""act""stop""cannotTell""conforming""nonConforming""undecided""routine""baseline""before',
    'Service""afterService""afterCrash""complaint""measured""typed""docked""imported""settled""peak""over',
    'load""unstable""spike""notReleased""peakHold""short""coarse""cut""simple""guarded""iso14253""ilacG8"',
    '"probability""repeatability""holdNoise""resolution""zero""gaugeProof""adapter""temperature""drift""m',
    'isalignment""normal""rectangular""triangular""t""belowMinimum""aboveMaximum""fellFromBaseline""fellF',
    'romPrevious""belowWarning""withinLimits""holdsBaseline""undecidedAtMinimum""straddlesWarning""techni',
    'cian""planner""lab""keeper""inUse""retired"{"at":"","body":{"actDrop":0.2,"adapterId":"","baseline":',
    '{"checkId":"","correlation":0.5,"standardUncertaintyN":,"valueN":},"budget":{"contributions":[{"assu',
    'med":false,"degreesOfFreedom":2,"distribution":"t","source":"repeatability","standardN":,"type":"A"}',
    ',{"assumed":false,"degreesOfFreedom":null,"distribution":"rectangular","source":"holdNoise","standar',
    'dN":,"type":"B"},{"assumed":false,"degreesOfFreedom":null,"distribution":"rectangular","source":"res',
    'olution","standardN":,"type":"B"},{"assumed":false,"degreesOfFreedom":null,"distribution":"rectangul',
    'ar","source":"zero","standardN":,"type":"B"},{"assumed":false,"degreesOfFreedom":null,"distribution"',
    ':"rectangular","source":"gaugeProof","standardN":,"type":"B"},{"assumed":true,"degreesOfFreedom":nul',
    'l,"distribution":"rectangular","source":"adapter","standardN":,"type":"B"},{"assumed":true,"degreesO',
    'fFreedom":null,"distribution":"rectangular","source":"temperature","standardN":,"type":"B"}],"covera',
    'ge":0.95,"coverageFactor":2,"degreesOfFreedom":,"dominant":"gaugeProof","expandedN":,"standardN":},"',
    'cautionDrop":0.1,"checkId":"","clockDoubtful":false,"conformity":"conforming","corrections":{"adapte',
    'rScale":,"adapterVersion":2,"curve":{"coefficients":[,,],"fromN":0,"proofId":"","toN":,"uncertainty"',
    ':[{"atN":,"relative":},{"atN":,"relative":}],"version":1}},"counter":,"cycles":[{"creep":,"cycleId":',
    '"","dropped":null,"endIndex":400,"endS":,"flags":[],"noiseN":,"overshoot":,"peakIndex":20,"peakN":,"',
    'riseTimeS":,"settledN":,"settledUncertaintyN":,"settledWindow":{"effectiveN":,"fromIndex":120,"n":20',
    '0,"toIndex":320},"slopeNPerS":,"startIndex":0,"startS":,"waveformHash":null,"zeroAfterN":,"zeroBefor',
    'eN":,"zeroN":}],"dropFromBaseline":,"dropFromPrevious":,"gapsS":[],"gaugeId":"","limits":{"maximumN"',
    ':,"minimumN":,"nominalN":,"warningN":},"measuredAt":"","note":null,"offsetMinutes":60,"operatorId":"',
    '","pattern":{},"patternId":"","previous":{"checkId":"","correlation":0.5,"standardUncertaintyN":,"va',
    'lueN":},"probabilityConforming":,"programVersion":"0.1.0","rateHz":100,"rawLine":null,"reason":"rout',
    'ine","reasons":[{"code":"withinLimits","expandedN":,"limitN":,"valueN":}],"roundId":null,"rule":{"co',
    'verageFactor":2,"rule":"guarded"},"series":{"basis":"settled","meanN":,"n":1,"outliers":[],"rangeN":',
    ',"sN":},"source":"measured","spindleId":"","spindleWarm":true,"temperatureC":21.5,"unit":"kN","value',
    'N":,"verdict":"good","warnings":[],"weakenedBy":[],"workOrder":null,"zone":null},"id":"x","kind":"ch',
    'eck","offsetMinutes":60,"origin":"x","prev":"x","seq":1,"v":1}',
  ].join(""),
  "latin1",
);
