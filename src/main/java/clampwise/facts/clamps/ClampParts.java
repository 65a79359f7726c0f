package clampwise.facts.clamps;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.ClampFits;
import clampwise.facts.clamps.ClampUse.Role;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.Layout;
import clampwise.job.Flag;
import clampwise.job.ModuleClamp;
import clampwise.job.Named;
import clampwise.job.Parts;
import clampwise.job.Text;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
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

  /**
   * Names of the clamps that grip a frame height where this one does not, as a text such as {@code
   * A or B}; only bonding ones where this one is bonding.
   */
  Optional<String> gripping(ClampUse instead, double frameHeightM) {
    boolean bonding = instead.clamp().bonding().filter(Flag::value).isPresent();
    String names =
        sources.stream()
            .map(parts -> new Catalogue(parts, Named.none()))
            .map(
                known ->
                    instead.role() == Role.MID
                        ? ClampFits.mid(known, frameHeightM, bonding)
                        : ClampFits.end(known, frameHeightM, bonding))
            .flatMap(fits -> fits.names().stream())
            .distinct()
            .collect(Collectors.joining(" or "));
    return names.isEmpty() ? Optional.empty() : Optional.of(names);
  }

  private static Function<Parts, Named<ModuleClamp>> clamps(Role role) {
    return role == Role.MID ? Parts::midClamps : Parts::endClamps;
  }
}
