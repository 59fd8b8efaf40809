package umbercard;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.stream.Stream;

/** A condition on what a class shows in its public signatures. */
final class PublicSignatures {
    private PublicSignatures() {}

    static ArchCondition<JavaClass> nameNothingOf(String library) {
        return new ArchCondition<>("name nothing of " + library + " in a public signature") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                type.getCodeUnits().stream()
                        .filter(unit -> unit.getModifiers().contains(JavaModifier.PUBLIC))
                        .filter(unit -> named(unit).anyMatch(name -> name.startsWith(library)))
                        .forEach(unit ->
                                events.add(SimpleConditionEvent.violated(unit, unit.getFullName() + " names it")));
            }
        };
    }

    private static Stream<String> named(JavaCodeUnit unit) {
        return Stream.concat(Stream.of(unit.getRawReturnType()), unit.getRawParameterTypes().stream())
                .map(JavaClass::getName);
    }
}
