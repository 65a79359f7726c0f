package clampwise.facts.clamps;

import clampwise.facts.clamps.ClampUse.Role;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.Layout;
import clampwise.job.ModuleClamp;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.Text;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The mid and end clamps a job can use: its own before those of the catalogue. */
record ClampParts(List<Parts> sources) {

  static ClampParts of(Layout layout) {
    Stream<Parts> own = layout.job().parts().stream();
    return new ClampParts(Stream.concat(own, Stream.of(layout.catalogue().parts())).toList());
  }

  /** The clamp on an attachment, if it is named and known. */
  Optional<ClampUse> on(Attachment attachment) {
    Role first = attachment.kind() == Kind.END ? Role.END : Role.MID;
    Role second = first == Role.MID ? Role.END : Role.MID;
    return attachment.clamp().flatMap(name -> find(name, first).or(() -> find(name, second)));
  }

  Optional<ClampUse> find(Text name, Role role) {
    return sources.stream()
        .flatMap(parts -> clamps(role).apply(parts).find(name.value()).stream())
        .findFirst()
        .map(clamp -> new ClampUse(name, role, clamp));
  }

  /** Names of the clamps of a role that grip a frame height, as a text such as {@code A or B}. */
  Optional<String> gripping(Role role, double frameHeightM) {
    List<String> names =
        sources.stream()
            .flatMap(parts -> clamps(role).apply(parts).all().stream())
            .filter(item -> grips(item.value(), frameHeightM))
            .map(item -> item.name().value())
            .distinct()
            .toList();
    return names.isEmpty() ? Optional.empty() : Optional.of(String.join(" or ", names));
  }

  private static boolean grips(ModuleClamp clamp, double frameHeightM) {
    return clamp.frameHeight().filter(range -> range.contains(frameHeightM)).isPresent();
  }

  private static Function<Parts, Named<ModuleClamp>> clamps(Role role) {
    return role == Role.MID ? Parts::midClamps : Parts::endClamps;
  }
}
