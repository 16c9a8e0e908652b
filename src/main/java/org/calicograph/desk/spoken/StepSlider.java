package org.calicograph.desk.spoken;

import java.util.function.DoubleUnaryOperator;
import javafx.scene.AccessibleAttribute;
import javafx.scene.control.Slider;

/** A slider over the steps of a dial that tells listeners the dial's values, not the numbers of its steps. */
public final class StepSlider extends Slider {

    private DoubleUnaryOperator told = DoubleUnaryOperator.identity();

    /** What number to tell for a step. */
    public void telling(DoubleUnaryOperator value) {
        told = value;
        notifyAccessibleAttributeChanged(AccessibleAttribute.VALUE);
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        Object plain = super.queryAccessibleAttribute(attribute, parameters);
        return switch (attribute) {
            case VALUE, MIN_VALUE, MAX_VALUE -> plain instanceof Double step ? (Object) told.applyAsDouble(step) : plain;
            default -> plain;
        };
    }
}
