import { percentToDecibels } from 'beamkeep/attenuation';
import {
  angleOfDisplacement,
  apertureShare,
  coverObscuration,
  deflection,
  drift,
  edgeInSpot,
  edgeOnDisc,
  filterLoss,
  geometricLoss,
  jitterOneAxis,
  jitterTwoAxes,
  lobeLoss,
  pointingError,
  pointingLoss,
  type RangeRegime,
  rangeLoss,
  retroreflection,
  spotWidths,
  sunPosition,
  swayHarmonics,
  thermalBow,
  thermalGrowth,
} from 'beamkeep/optics';
import { describe } from 'vitest';
import { testEach, testThatAllAreTested } from './published.js';

describe('aim', () => {
  testEach<{ offsetDegrees: number; halfPowerFullWidthDegrees: number }>('pointing-loss-12', (is) =>
    pointingLoss(is.offsetDegrees, is.halfPowerFullWidthDegrees),
  );
  testEach<{ offsetDegrees: number; halfPowerHalfAngleDegrees: number; lobesInSeries: number }>('lobe-loss', (is) =>
    lobeLoss(is.offsetDegrees, is.halfPowerHalfAngleDegrees, is.lobesInSeries),
  );
  testEach<{ radiusAtInverseSquareE: number }>('gaussian-beam-widths', (is) => spotWidths(is.radiusAtInverseSquareE));
  testEach<{ apertureRadiusOverBeamRadius: number }>('aperture-fraction', (is) =>
    apertureShare(is.apertureRadiusOverBeamRadius, 1),
  );
  testEach<{ jitterPerAxisDegrees: number; halfPowerHalfAngleDegrees: number }>('aim-jitter-2d', (is) => {
    const found = jitterTwoAxes(is.jitterPerAxisDegrees, is.halfPowerHalfAngleDegrees);
    return { ...found, shareOfTimeBelowHalf: found.shareBelow(0.5), meanLossDecibels: found.meanLoss };
  });
  testEach<{ offsetDegrees: number; jitterDegrees: number; halfPowerHalfAngleDegrees: number }>(
    'aim-jitter-1d',
    (is) => {
      const found = jitterOneAxis(is.offsetDegrees, is.jitterDegrees, is.halfPowerHalfAngleDegrees);
      return { ...found, meanLossDecibels: found.meanLoss };
    },
  );
  testEach<{ apertureRadiusMetres: number; beamRadiusMetres: number; jitterMetres: number }>(
    'pointing-error-farid',
    (is) => {
      const found = pointingError(is.apertureRadiusMetres, is.beamRadiusMetres, is.jitterMetres);
      return { ...found, equivalentBeamRadiusMetres: found.equivalentBeamRadius };
    },
  );
  testEach<{ offsetDegrees: number; swayAmplitudeDegrees: number; halfPowerHalfAngleDegrees: number }>(
    'sway-harmonics',
    (is) => {
      const found = swayHarmonics(is.offsetDegrees, is.swayAmplitudeDegrees, is.halfPowerHalfAngleDegrees);
      return {
        meanDecibels: found.mean,
        firstHarmonicDecibels: found.first,
        secondHarmonicDecibels: found.second,
        ratioFirstToSecond: found.ratio,
      };
    },
  );
});

describe('structure', () => {
  testEach<{ displacementMillimetres: number; distanceMetres: number }>('angle-of-displacement', (is) =>
    angleOfDisplacement(is.displacementMillimetres, is.distanceMetres),
  );
  testEach<{ coefficientPerKelvin: number; lengthMetres: number; temperatureChangeKelvin: number }>(
    'thermal-expansion',
    (is) => ({ millimetres: thermalGrowth(is.coefficientPerKelvin, is.lengthMetres, is.temperatureChangeKelvin) }),
  );
  testEach<{
    coefficientPerKelvin: number;
    differenceTopToBottomKelvin: number;
    depthMetres: number;
    spanMetres: number;
  }>('thermal-bow', (is) =>
    thermalBow(is.coefficientPerKelvin, is.differenceTopToBottomKelvin, is.depthMetres, is.spanMetres),
  );
  testEach<{ spanMetres: number; ratio: number }>('deflection-limit', (is) => deflection(is.spanMetres, is.ratio));
  testEach<{ heightMetres: number; ratio: number }>('frame-drift', (is) => drift(is.heightMetres, is.ratio));
});

describe('range', () => {
  testEach<{ distanceMetres: number; fullDivergenceMilliradians: number; receiverDiameterMetres: number }>(
    'geometric-loss-one-way',
    (is) => geometricLoss(is.distanceMetres, is.fullDivergenceMilliradians, is.receiverDiameterMetres),
  );
  testEach<{ nearMetres: number; farMetres: number; regime: RangeRegime }>('range-law', (is) =>
    rangeLoss(is.nearMetres, is.farMetres, is.regime),
  );
  testEach<{
    sourceCandela: number;
    coefficientCandelaPerLuxPerSquareMetre: number;
    areaSquareMetres: number;
    distanceMetres: number;
  }>('retroreflected-illuminance', (is) => {
    const found = retroreflection(
      is.sourceCandela,
      is.coefficientCandelaPerLuxPerSquareMetre,
      is.areaSquareMetres,
      is.distanceMetres,
    );
    return {
      illuminanceAtReflectorLux: found.illuminanceAtReflector,
      returnedCandela: found.returnedIntensity,
      illuminanceAtReceiverLux: found.illuminanceAtReceiver,
    };
  });
});

describe('cover and filter', () => {
  testEach<{ edgeDistanceFromCentreOverRadius: number }>('cover-straight-edge-on-disc', (is) =>
    edgeOnDisc(is.edgeDistanceFromCentreOverRadius),
  );
  testEach<{ widthMillimetres: number; coveredMillimetres: number }>('cover-strip-on-rectangle', (is) => {
    const half = is.widthMillimetres / 2;
    const strip = { from: -half, to: is.coveredMillimetres - half };
    const percent = coverObscuration({ shape: 'rectangle', width: is.widthMillimetres }, strip);
    return { percent, decibels: percentToDecibels(percent) };
  });
  testEach<{ edgeOffsetOverBeamRadius: number }>('cover-edge-in-gaussian', (is) =>
    edgeInSpot(is.edgeOffsetOverBeamRadius),
  );
  testEach<{ filterTransmittance: number; crossings: 1 | 2 }>('test-filter', (is) =>
    filterLoss(is.filterTransmittance, is.crossings),
  );
});

describe('sun', () => {
  testEach<{ time: string; latitude: number; longitude: number }>('sun-position', (is) => {
    const { azimuth, elevation, refracted } = sunPosition(Date.parse(is.time), is.latitude, is.longitude);
    return { azimuthDegrees: azimuth, altitudeDegrees: refracted, trueAltitudeDegrees: elevation };
  });
});

testThatAllAreTested();
