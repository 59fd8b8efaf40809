package umbercard;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import umbercard.door.BoxReader;
import umbercard.door.Face;
import umbercard.door.Instrument;
import umbercard.door.Reading;
import umbercard.door.Remedy;
import umbercard.door.Writer;

/** Holds the package tree to what DEVELOPERS.md says of it. */
class ArchitectureTest {
    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("umbercard");

    /** A floor, so that no rule passes because nothing was looked at; raise it as the program grows. */
    private static final int CLASSES_AT_LEAST = 600;

    private static final List<String> DOOR_AND_ITS_OWN =
            List.of("door", "model", "geometry", "color", "picture", "notan", "zones", "words", "kernel");

    /** What each package may use of ours, besides itself; the desk and the command line may use all but each other. */
    private static final Map<String, List<String>> MAY_USE = new TreeMap<>(Map.ofEntries(
            Map.entry("geometry", List.of()),
            Map.entry("color", List.of()),
            Map.entry("kernel", List.of()),
            Map.entry("words", List.of("color")),
            Map.entry("model", List.of("geometry", "color")),
            Map.entry("picture", List.of("geometry", "color")),
            Map.entry("notan", List.of("model", "geometry")),
            Map.entry("zones", List.of("model", "geometry", "notan", "words")),
            Map.entry("door", List.of("model", "geometry", "color", "picture", "notan", "zones", "words")),
            Map.entry("photo", List.of("model", "picture", "geometry", "color", "zones", "words", "kernel")),
            Map.entry("notes", DOOR_AND_ITS_OWN),
            Map.entry("transfer", DOOR_AND_ITS_OWN),
            Map.entry("readings", plus(DOOR_AND_ITS_OWN, "notes")),
            // A remedy meets the readings' limits and tells what they become, and no reading knows of remedies.
            Map.entry("remedies", plus(DOOR_AND_ITS_OWN, "readings")),
            Map.entry("easel", plus(DOOR_AND_ITS_OWN, "notes", "readings", "photo")),
            Map.entry("cards", plus(DOOR_AND_ITS_OWN, "notes", "transfer")),
            Map.entry("rubbed", plus(DOOR_AND_ITS_OWN, "photo", "cards")),
            Map.entry("store", List.of("door", "model", "geometry", "color", "picture", "words", "kernel")),
            Map.entry("cli", everythingBut("desk")),
            Map.entry("desk", everythingBut("cli"))));

    private static List<String> plus(List<String> some, String... more) {
        List<String> all = new ArrayList<>(some);
        all.addAll(List.of(more));
        return all;
    }

    private static List<String> everythingBut(String other) {
        return Stream.of(
                        "geometry color kernel words model picture notan zones door photo notes transfer readings remedies easel cards rubbed store cli desk"
                                .split(" "))
                .filter(name -> !name.equals(other))
                .toList();
    }

    @Test
    void enoughClassesAreChecked() {
        assertThat(OURS.size()).isGreaterThan(CLASSES_AT_LEAST);
    }

    @Test
    void everyPackageUsesOnlyWhatItMay() {
        MAY_USE.forEach((name, others) -> {
            List<String> allowed = new ArrayList<>(List.of("umbercard." + name + ".."));
            others.forEach(other -> allowed.add("umbercard." + other + ".."));
            noClasses()
                    .that()
                    .resideInAPackage("umbercard." + name + "..")
                    .should()
                    .dependOnClassesThat(resideInAPackage("umbercard..")
                            .and(not(resideInAnyPackage(allowed.toArray(String[]::new)))))
                    .as(name + " may use only " + others)
                    .check(OURS);
        });
    }

    @Test
    void everyClassLivesInAKnownPackage() {
        assertThat(OURS).allSatisfy(type -> {
            String[] names = type.getPackageName().split("\\.");
            if (names.length > 1) {
                assertThat(MAY_USE).containsKey(names[1]);
            }
        });
    }

    @Test
    void noPackagesUseEachOtherInACircle() {
        slices().matching("umbercard.(**)").should().beFreeOfCycles().check(OURS);
        slices().matching("umbercard.(*)..").should().beFreeOfCycles().check(OURS);
    }

    @Test
    void familiesOfPluginsDoNotKnowEachOther() {
        slices().matching("umbercard.readings.(*)..")
                .should()
                .notDependOnEachOther()
                .check(OURS);
    }

    @Test
    void swingStaysInTheDesk() {
        noClasses()
                .that(not(resideInAPackage("umbercard.desk..")))
                .or(resideInAPackage("umbercard.desk.instruments.."))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("javax.swing..")
                .check(OURS);
    }

    @Test
    void theToolkitStaysWherePixelsAre() {
        noClasses()
                .that(not(resideInAnyPackage(
                        "umbercard",
                        "umbercard.photo..",
                        "umbercard.cards.java2d..",
                        "umbercard.cards.png..",
                        "umbercard.cards.type..",
                        "umbercard.desk..")))
                .or(resideInAPackage("umbercard.desk.instruments.."))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("java.awt..")
                .check(OURS);
    }

    @Test
    void theOverlayLibraryStaysInGeometry() {
        noClasses()
                .that(not(resideInAPackage("umbercard.geometry..")))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.locationtech..")
                .check(OURS);
        classes()
                .that()
                .resideInAPackage("umbercard.geometry..")
                .and()
                .arePublic()
                .should(PublicSignatures.nameNothingOf("org.locationtech"))
                .check(OURS);
    }

    @Test
    void everyPluginIsRegistered() {
        for (Class<?> door :
                List.of(Instrument.class, Reading.class, Remedy.class, Face.class, Writer.class, BoxReader.class)) {
            List<String> registered = ServiceLoader.load(door).stream()
                    .map(provider -> provider.type().getName())
                    .sorted()
                    .toList();
            List<String> written = OURS.stream()
                    .filter(type -> type.isAssignableTo(door) && !type.isInterface())
                    .filter(type -> !type.getModifiers().contains(JavaModifier.ABSTRACT) && !type.isAnonymousClass())
                    .map(JavaClass::getName)
                    .sorted()
                    .toList();
            assertThat(registered).as(door.getSimpleName()).isEqualTo(written);
        }
    }

    @Test
    void everyPackageSaysWhatItIsFor() throws IOException {
        try (Stream<Path> folders = Files.walk(Path.of("src/main/java/umbercard"))) {
            assertThat(folders.filter(Files::isDirectory))
                    .allSatisfy(folder -> assertThat(folder.resolve("package-info.java"))
                            .content()
                            .contains("/**", "@NullMarked"));
        }
    }
}
