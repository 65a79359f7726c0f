package clampwise.facts.install;

import clampwise.job.Install.Joint;
import clampwise.job.Quantity.Torque;
import java.util.Optional;

/**
 * A part of the layout whose screws are tightened to a torque.
 *
 * @param name its name
 * @param word kind and name
 * @param shelf where parts of its kind are written
 * @param joint what its screws are
 * @param maker the torque that its maker states, if known
 */
record UsedPart(String name, String word, String shelf, Joint joint, Optional<Torque> maker) {}
