// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.RcdScope;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
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
    HIGHER_LOOP {
        /** Loop impedance of the supply, measured at the origin: beyond what the network operator declares, an advice. */
        @Override
        void worsen(Survey survey, double by) {
            ElectricalFeed feed = survey.getElectricity();
            feed.setExternalLoop(
                    feed.getExternalLoop().withSi(feed.getExternalLoop().si() * (1 + 2 * by)));
        }
    },
    HIGHER_ELECTRODE {
        /** Beyond 200 ohm an electrode may dry out, an advice. */
        @Override
        void worsen(Survey survey, double by) {
            ElectricalFeed feed = survey.getElectricity();
            if (feed.getElectrode() != null) {
                feed.setElectrode(feed.getElectrode().withSi(feed.getElectrode().si() * (1 + by)));
            }
        }
    },
    HARDER_WATER {
        /** Scale, which advice alone looks at where instructions name no hardest water. */
        @Override
        void worsen(Survey survey, double by) {
            survey.getWater()
                    .setHardness(survey.getWater()
                            .getHardness()
                            .withSi(survey.getWater().getHardness().si() * (1 + 2 * by)));
        }
    },
    SHARED_SERVICE_PIPE {
        @Override
        void worsen(Survey survey, double by) {
            survey.getWater().setSharedServicePipe(true);
        }
    },
    FUSE_NOT_CONFIRMED {
        /** The network operator has not said which fuse there is, an advice. */
        @Override
        void worsen(Survey survey, double by) {
            survey.getElectricity().setServiceFuseConfirmed(false);
        }
    },
    LARGER_SWITCHED_PART {
        /** A fault of the shower switches the whole house off, an advice. */
        @Override
        void worsen(Survey survey, double by) {
            ResidualDevice device = survey.getElectricity().getCircuit().getRcd();
            if (device.isSetScope() && device.getScope() == RcdScope.SEVERAL) {
                device.setScope(RcdScope.HOUSE);
            }
        }
    },
    FRAIL_USERS {
        /** Water that scalds the frail sooner, an advice. */
        @Override
        void worsen(Survey survey, double by) {
            if (survey.getCustomer() == null) {
                survey.setCustomer(SurveyFactory.eINSTANCE.createCustomer());
            }
            survey.getCustomer().setVulnerable(true);
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
