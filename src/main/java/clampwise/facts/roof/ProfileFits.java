package clampwise.facts.roof;

import clampwise.catalogue.ProfileNames;
import clampwise.facts.layout.Layout;
import clampwise.job.Choice;
import clampwise.job.Panel;
import clampwise.job.SeamClamp;
import clampwise.units.Unit;

/** Holds what each part is made for against the covering it sits on. */
final class ProfileFits extends PartQuestion {

  ProfileFits() {
    super(ProfileFit.class);
  }

  @Override
  void ask(PartUse use, Asked asked) {
    boolean rightKind = Profiles.suitsKind(use.part(), use.panel());
    if (rightKind && isMisspelt(use, asked)) {
      String reason = "the profile of " + name(use) + " is none that a part is made for";
      missing(use, asked, reason, use.panel().profile().orElseThrow().at());
    } else if (rightKind && use.panel().profile().isEmpty()) {
      String reason = use.ofPanel("the profile of " + name(use), "profile");
      missing(use, asked, reason, use.panelAt());
    } else if (rightKind && use.part().profiles().isEmpty()) {
      String reason = use.ofPart("the list of profiles " + use.name() + " is made for", "profiles");
      missing(use, asked, reason, use.partAt());
    } else {
      asked.answers().add(fact(use, asked));
    }
  }

  private static boolean isMisspelt(PartUse use, Asked asked) {
    Layout layout = asked.layout();
    ProfileNames names = new ProfileNames(layout.catalogue().with(layout.job()).parts());
    return names.meant(use.panel()).isPresent();
  }

  private static ProfileFit fact(PartUse use, Asked asked) {
    return new ProfileFit(
        use.subject(),
        use.cause(),
        use.name().at(),
        Unit.MILLIMETRE,
        use.name().value(),
        Profiles.kind(use.part()),
        name(use),
        covering(use.panel()),
        madeFor(use),
        use.isMadeForIt(),
        asked.fitting(use));
  }

  private static String name(PartUse use) {
    return use.plane().panelName();
  }

  private static String covering(Panel panel) {
    String kind = Choice.word(panel.kind().value()).replace('-', ' ');
    return panel.profile().map(profile -> profile.value() + " " + kind).orElse(kind);
  }

  private static String madeFor(PartUse use) {
    String kind = use.part() instanceof SeamClamp ? "standing seam" : "ribs or crests";
    String profiles = Profiles.names(use.part().profiles());
    return profiles.isEmpty() ? kind : profiles + " " + kind;
  }
}
