// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Current;
import twinfeed.units.Length;
import twinfeed.units.Power;
import twinfeed.units.Pressure;
import twinfeed.units.Temperature;

/** One reading of a house made worse, everything else as it was. */
enum WorseReading {
    LONGER_CABLE {
        @Override
        void worsen(Survey survey, double by) {
            CableSegment longest =
                    survey.getElectricity().getCircuit().getSegments().get(0);
            longest.setLength(Length.ofSi(longest.getLength().si() * (1 + by)));
        }
    },
    LESS_PRESSURE {
        /**
         * Both pressures, so that the test tells as much as before; a static pressure that instructions may forbid stays, for less of that is
         * better.
         */
        @Override
        void worsen(Survey survey, double by) {
            WaterTest test = survey.getWater().getTest();
            if (test.getStaticPressure().si() <= LEAST_FORBIDDEN_PA) {
                test.setStaticPressure(Pressure.ofSi(test.getStaticPressure().si() * (1 - by)));
                test.setRunningPressure(Pressure.ofSi(test.getRunningPressure().si() * (1 - by)));
            }
        }
    },
    LESS_RUNNING_PRESSURE {
        /**
         * The running pressure alone. The static one alone is no worse reading: with the same running pressure it means a supply that falls
         * less, which gives more beyond the flow of the test.
         */
        @Override
        void worsen(Survey survey, double by) {
            WaterTest test = survey.getWater().getTest();
            test.setRunningPressure(
                    test.getRunningPressure().withSi(test.getRunningPressure().si() * (1 - by)));
        }
    },
    LESS_FLOW {
        /** The flow of the test alone: the same fall of pressure for less water. */
        @Override
        void worsen(Survey survey, double by) {
            WaterTest test = survey.getWater().getTest();
            test.setFlow(test.getFlow().withSi(test.getFlow().si() * (1 - by)));
        }
    },
    LARGER_LOAD {
        @Override
        void worsen(Survey survey, double by) {
            for (Load load : survey.getElectricity().getLoads()) {
                if (load.getPower() != null) {
                    load.setPower(Power.ofSi(load.getPower().si() * (1 + by)));
                }
                if (load.getCurrent() != null) {
                    load.setCurrent(Current.ofSi(load.getCurrent().si() * (1 + by)));
                }
            }
        }
    },
    COLDER_WATER {
        @Override
        void worsen(Survey survey, double by) {
            double intakeC = survey.getWinterIntake().si();
            survey.setWinterIntake(Temperature.ofSi(intakeC - by * (intakeC - 1)));
        }
    };

    /** No heater of the random houses forbids less than this. */
    private static final double LEAST_FORBIDDEN_PA = 8e5;

    abstract void worsen(Survey survey, double by);

    /** A copy of a house with this reading worse by a share. */
    Survey of(Survey survey, double by) {
        Survey worse = EcoreUtil.copy(survey);
        worsen(worse, by);
        return worse;
    }
}
