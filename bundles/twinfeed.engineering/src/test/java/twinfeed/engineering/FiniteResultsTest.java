// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.Month;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.engineering.cable.Cable;
import twinfeed.engineering.cable.CableSegment;
import twinfeed.engineering.cable.Protection;
import twinfeed.engineering.demand.DiversityLoad;
import twinfeed.engineering.heater.PressureSwitch;
import twinfeed.engineering.heater.SwitchMargin;
import twinfeed.engineering.heater.Throttle;
import twinfeed.engineering.network.FixedPressure;
import twinfeed.engineering.network.LossShares;
import twinfeed.engineering.network.Network;
import twinfeed.engineering.network.PowerCurve;
import twinfeed.engineering.network.PumpedSupply;
import twinfeed.engineering.network.Supply;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.network.SupplyTest;
import twinfeed.engineering.network.Tap;
import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.SlopedValue;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.Pipe;
import twinfeed.engineering.pipe.PipeRun;
import twinfeed.engineering.pipe.PipeSegment;
import twinfeed.engineering.water.Fluid;
import twinfeed.engineering.water.Heat;
import twinfeed.engineering.water.LimitedFlow;
import twinfeed.engineering.water.MainsTemperature;
import twinfeed.engineering.water.Water;

/**
 * No NaN and no infinity leaves a public function, whatever goes in: each is called with a thousand odd arguments and
 * must answer with a number, a named trouble, or a {@link DomainException}.
 */
class FiniteResultsTest {
    private static final List<Class<?>> SUBJECTS = List.of(
            Water.class,
            Heat.class,
            Pipe.class,
            PipeRun.class,
            Fluid.class,
            PipeSegment.class,
            SupplyTest.class,
            SupplyCurve.class,
            FixedPressure.class,
            PowerCurve.class,
            PumpedSupply.class,
            Outlet.class,
            Network.class,
            LossShares.class,
            Throttle.class,
            SwitchMargin.class,
            PressureSwitch.class,
            Cable.class,
            CableSegment.class,
            Protection.class,
            DiversityLoad.class,
            MainsTemperature.class,
            LimitedFlow.class);

    private static final double[] ODD = {
        0,
        -0.0,
        1,
        -1,
        0.05,
        4,
        40,
        230,
        1e-5,
        1e-4,
        1e5,
        3e5,
        Double.MIN_VALUE,
        Double.MIN_NORMAL,
        1e-160,
        1e160,
        1e300,
        Double.MAX_VALUE,
        -1e300,
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY
    };

    static Stream<Method> functions() {
        return SUBJECTS.stream()
                .flatMap(subject -> Arrays.stream(subject.getDeclaredMethods()))
                .filter(method -> Modifier.isPublic(method.getModifiers()) && !method.isSynthetic())
                .filter(method -> !List.of("equals", "hashCode", "toString", "valueOf", "values")
                        .contains(method.getName()))
                .filter(method -> !method.getName().endsWith("Expression"))
                // Between the rooms of the solver values travel in a buffer that is used again; its arguments were
                // checked before.
                .filter(method -> !List.of(method.getParameterTypes()).contains(SlopedValue.class));
    }

    @Test
    void sawTheFunctions() {
        assertTrue(functions().count() > 100, () -> "functions: " + functions().count());
    }

    @ParameterizedTest
    @MethodSource("functions")
    void answersWithANumberATroubleOrARefusal(Method function) throws ReflectiveOperationException {
        OddArguments odd = new OddArguments(new Random(7));
        for (int attempt = 0; attempt < 1000; attempt++) {
            Object[] arguments = new Object[0];
            try {
                Object subject =
                        Modifier.isStatic(function.getModifiers()) ? null : odd.of(function.getDeclaringClass());
                arguments = odd.of(function.getGenericParameterTypes());
                assertFinite(function.invoke(subject, arguments), function, arguments);
            } catch (InvocationTargetException e) {
                Object[] given = arguments;
                assertInstanceOf(
                        DomainException.class, e.getCause(), () -> function + " of " + Arrays.deepToString(given));
            } catch (DomainException e) {
                // A record refused its odd parts: nothing to call, which is as good.
                assertTrue(!e.argument().isEmpty());
            }
        }
    }

    private static void assertFinite(Object result, Method function, Object[] arguments)
            throws ReflectiveOperationException {
        if (result instanceof Double number) {
            assertTrue(
                    Double.isFinite(number), () -> function + " of " + Arrays.deepToString(arguments) + ": " + number);
        } else if (result instanceof Record parts) {
            for (RecordComponent component : parts.getClass().getRecordComponents()) {
                assertFinite(component.getAccessor().invoke(parts), function, arguments);
            }
        } else if (result instanceof List<?> list) {
            for (Object each : list) {
                assertFinite(each, function, arguments);
            }
        }
    }

    /** Makes arguments of the package's types out of odd numbers. */
    private record OddArguments(Random random) {
        Object[] of(Type... types) {
            return Arrays.stream(types).map(this::ofAny).toArray();
        }

        private Object ofAny(Type type) {
            if (type instanceof ParameterizedType list) {
                Type element = list.getActualTypeArguments()[0];
                return Arrays.asList(
                        of(Collections.nCopies(random.nextInt(3), element).toArray(Type[]::new)));
            }
            return of((Class<?>) type);
        }

        double number() {
            // Most of them usual, so that calls get past the first check.
            return random.nextInt(5) == 0
                    ? ODD[random.nextInt(ODD.length)]
                    : Math.pow(10, -6 + 9 * random.nextDouble());
        }

        Object of(Class<?> type) {
            if (type == double.class || type == Double.class) {
                return number();
            } else if (type == double[].class) {
                return random.doubles(random.nextInt(4)).map(x -> number()).toArray();
            } else if (type == int.class) {
                return random.nextInt(400) - 10;
            } else if (type == boolean.class) {
                return random.nextBoolean();
            } else if (type == String.class) {
                return "load";
            } else if (type.isEnum()) {
                return type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)];
            } else if (type == Solution.class) {
                return random.nextBoolean()
                        ? Solution.of(Math.abs(random.nextGaussian()))
                        : Solution.none(FailureReason.NO_POWER);
            }
            return part(type);
        }

        private Object part(Class<?> type) {
            if (type == Supply.class) {
                return of(random.nextBoolean() ? SupplyCurve.class : FixedPressure.class);
            } else if (type == PipeRun.class) {
                return PipeRun.of(segments(), (Fluid) of(Fluid.class));
            } else if (type == Network.class) {
                return Network.of(
                        (Supply) of(Supply.class), segments(), segments(), List.of((Tap) of(Tap.class)), (Fluid)
                                of(Fluid.class));
            } else if (type == Month.class) {
                return Month.of(1 + random.nextInt(12));
            }
            return record(type);
        }

        private List<PipeSegment> segments() {
            return random.nextInt(4) == 0 ? List.of() : List.of((PipeSegment) of(PipeSegment.class));
        }

        private Object record(Class<?> type) {
            List<RecordComponent> components = List.of(type.getRecordComponents());
            Class<?>[] types = components.stream().map(RecordComponent::getType).toArray(Class<?>[]::new);
            Type[] generic =
                    components.stream().map(RecordComponent::getGenericType).toArray(Type[]::new);
            try {
                return type.getDeclaredConstructor(types).newInstance(of(generic));
            } catch (InvocationTargetException e) {
                if (e.getCause() instanceof DomainException refused) {
                    throw refused;
                }
                throw new LinkageError(type.getName(), e);
            } catch (ReflectiveOperationException e) {
                throw new LinkageError(type.getName(), e);
            }
        }
    }
}
