package clampwise.takeoff;

import java.util.Optional;

/**
 * One of two ways to hold the same modules, without spares.
 *
 * @param attachments what holds it to the roof
 * @param railM length of rails [m]
 * @param railPieces pieces in which they are delivered
 * @param hardwareKg mass of all that holds and bonds the modules, if it is known [kg]
 * @param crewS time of a crew [s]
 */
public record Side(
    int attachments,
    int midClamps,
    int endClamps,
    double railM,
    int railPieces,
    int splices,
    int jumpers,
    int lugs,
    Optional<Double> hardwareKg,
    double crewS) {}
