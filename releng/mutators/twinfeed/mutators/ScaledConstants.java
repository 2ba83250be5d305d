// SPDX-License-Identifier: EPL-2.0
package twinfeed.mutators;

import org.pitest.mutationtest.engine.gregor.MethodInfo;
import org.pitest.mutationtest.engine.gregor.MethodMutatorFactory;
import org.pitest.mutationtest.engine.gregor.MutationContext;
import org.pitest.reloc.asm.MethodVisitor;
import org.pitest.reloc.asm.Opcodes;

/** Makes one constant of a formula 4 % larger: the tests have to notice. 0 and infinities stay. */
public final class ScaledConstants implements MethodMutatorFactory {
    /** How much larger. */
    private static final double FACTOR = 1.04;

    @Override
    public MethodVisitor create(MutationContext context, MethodInfo method, MethodVisitor next) {
        return new MethodVisitor(Opcodes.ASM9, next) {
            @Override
            public void visitLdcInsn(Object value) {
                super.visitLdcInsn(value instanceof Double constant ? scaled(constant) : value);
            }

            @Override
            public void visitInsn(int opcode) {
                if (opcode == Opcodes.DCONST_1) {
                    visitLdcInsn(1.0); // javac's short form of it
                } else {
                    super.visitInsn(opcode);
                }
            }

            private double scaled(double value) {
                if (value == 0 || !Double.isFinite(value * FACTOR)) {
                    return value;
                }
                boolean now = context.shouldMutate(
                        context.registerMutation(ScaledConstants.this, value + " to " + value * FACTOR));
                return now ? value * FACTOR : value;
            }
        };
    }

    @Override
    public String getGloballyUniqueId() {
        return getClass().getName();
    }

    @Override
    public String getName() {
        return "SCALED_CONSTANTS";
    }
}
