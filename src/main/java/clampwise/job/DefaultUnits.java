package clampwise.job;

import java.util.Optional;

/** The units of numbers written without one. */
public record DefaultUnits(
    @Doc("Unit of bare lengths, such as mm or in.") Optional<Text> length,
    @Doc("Unit of bare angles.") Optional<Text> angle,
    @Doc("Unit of bare pressures.") Optional<Text> pressure,
    @Doc("Unit of bare forces.") Optional<Text> force,
    @Doc("Unit of bare masses.") Optional<Text> mass) {}
