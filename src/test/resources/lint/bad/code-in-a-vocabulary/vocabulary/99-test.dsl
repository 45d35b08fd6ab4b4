[consequence][]Go off=System.exit( 1 );
