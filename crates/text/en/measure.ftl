# The measures, as in the middle of a sentence; their unit and their usual range stand in the code.
name = { $id ->
    [carry] carry
    [total] total distance
    [offline] offline
    [ball_speed] ball speed
    [club_speed] club speed
    [launch_angle] launch angle
    [launch_direction] launch direction
    [spin_rate] spin rate
    [spin_axis] spin axis
    [apex] peak height
    [descent_angle] descent angle
    [hang_time] hang time
    [smash] smash factor
    [attack_angle] attack angle
    [club_path] club path
    [face_angle] face angle
    [face_to_path] face to path
    [dynamic_loft] dynamic loft
    [spin_loft] spin loft
    [strike_height] strike height
   *[strike_offset] strike offset
}
# The same as a thing that is spoken of: in Spanish with its article. Sideways the column is “offline”, the thing direction.
the = { $id ->
    [carry] carry
    [total] total distance
    [offline] direction
    [ball_speed] ball speed
    [club_speed] club speed
    [launch_angle] launch angle
    [launch_direction] launch direction
    [spin_rate] spin rate
    [spin_axis] spin axis
    [apex] peak height
    [descent_angle] descent angle
    [hang_time] hang time
    [smash] smash factor
    [attack_angle] attack angle
    [club_path] club path
    [face_angle] face angle
    [face_to_path] face to path
    [dynamic_loft] dynamic loft
    [spin_loft] spin loft
    [strike_height] strike height
   *[strike_offset] strike offset
}
# Why the smallest difference that matters is usually that large.
margin-why = { $reason ->
    [club-length] About half a club in distance.
    [quarter-fairway] A small part of a fairway’s width.
    [speed] Worth 1 to 1½ % of a driver’s carry.
    [speed-of-club] Worth 1½ to 2 % of a driver’s carry.
    [flight] Just visible in the flight.
    [delivery] About what a lesson tries to change.
   *[strike] A few millimeters of strike move spin and speed.
} A golfers’ rule of thumb, no study behind it.
